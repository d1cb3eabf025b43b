import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { tick } from 'svelte';
import { describe, expect, test, vi } from 'vitest';
import { FIRST_PREFERENCES } from '../../domain/preferences';
import { FIRST_SOUND_PREFERENCES, type SoundPreferences } from '../../domain/sound-preferences';
import { en as text } from '../../text/en';
import { formatsFor } from '../../text/formats';
import type { Voice } from '../../voice/engine';
import type { Heard } from '../../voice/speaker';
import SettingsScreen from './SettingsScreen.svelte';

const words = text.screens.settings.sound;
const anna: Voice = { id: 'anna', name: 'Anna', language: 'en-GB', local: true };
const far: Voice = { id: 'far', name: 'Far', language: 'en-US', local: false };
const ANNA_CHOSEN: SoundPreferences = { ...FIRST_SOUND_PREFERENCES, voice: 'anna' };

type Shown = { sound?: SoundPreferences; voices?: readonly Voice[] | undefined };

/** The screen, a voice that answers when the test does, and what was chosen. */
function show(shown: Shown = {}) {
  const chosen: SoundPreferences[] = [];
  const answers: ((how: Heard) => void)[] = [];
  const onsay = vi.fn((_: string) => new Promise<Heard>((answer) => answers.push(answer)));
  const props = ({ sound = FIRST_SOUND_PREFERENCES, voices }: Shown) => {
    const preferences = { ...FIRST_PREFERENCES, sound };
    return { preferences, voices, text, formats: formatsFor({ preferences, language: 'en' }) };
  };
  const onchoose = (next: typeof FIRST_PREFERENCES) => {
    chosen.push(next.sound);
    return Promise.resolve(undefined);
  };
  const { rerender } = render(SettingsScreen, {
    ...props(shown),
    browserHears: Promise.resolve(false),
    onchoose,
    onsay,
  });
  return {
    chosen,
    onsay,
    answer: (how: Heard, press = 0) => answers[press]?.(how),
    change: (next: Shown) => rerender(props(next)),
  };
}

const press = (name: string) => userEvent.click(screen.getByRole('button', { name }));

describe('what is chosen is handed on at once, and nothing else changes', () => {
  test.each<[string, SoundPreferences, SoundPreferences]>([
    ['slower', ANNA_CHOSEN, { ...ANNA_CHOSEN, rate: 0.9 }],
    ['faster', ANNA_CHOSEN, { ...ANNA_CHOSEN, rate: 1.1 }],
    ['as it is', { ...ANNA_CHOSEN, rate: 1.6 }, ANNA_CHOSEN],
    ['quieter', ANNA_CHOSEN, { ...ANNA_CHOSEN, volume: 0.9 }],
    ['louder', { ...ANNA_CHOSEN, volume: 0.2 }, { ...ANNA_CHOSEN, volume: 0.3 }],
  ])('by “%s”', async (name, sound, next) => {
    const { chosen } = show({ sound });
    await press(name);
    expect(chosen).toEqual([next]);
  });

  test.each<[string, SoundPreferences, SoundPreferences]>([
    [words.hearing.muted, ANNA_CHOSEN, { ...ANNA_CHOSEN, muted: true }],
    [words.hearing.on, { ...ANNA_CHOSEN, muted: true }, ANNA_CHOSEN],
  ])('by “%s”', async (name, sound, next) => {
    const { chosen } = show({ sound });
    await userEvent.click(screen.getByRole('radio', { name }));
    expect(chosen).toEqual([next]);
  });

  test.each<[string, SoundPreferences, SoundPreferences]>([
    ['Anna (en-GB)', FIRST_SOUND_PREFERENCES, ANNA_CHOSEN],
    ['Far (en-US), only with a network', ANNA_CHOSEN, { ...ANNA_CHOSEN, voice: 'far' }],
    [words.anyVoice, ANNA_CHOSEN, FIRST_SOUND_PREFERENCES],
  ])('by the voice “%s”', async (name, sound, next) => {
    const { chosen } = show({ sound, voices: [anna, far] });
    await userEvent.selectOptions(screen.getByRole('combobox', { name: words.voice }), name);
    expect(chosen).toEqual([next]);
  });
});

describe('how it stands', () => {
  test('is shown in words', () => {
    show({ sound: { muted: false, rate: 1.2, volume: 0.7 } });
    expect(screen.getAllByRole('status').map(({ textContent }) => textContent)).toEqual([
      '120 % of the voice’s own pace',
      '70 % of what the device is set to',
    ]);
  });

  test.each<[string, SoundPreferences, string[]]>([
    ['the first day', FIRST_SOUND_PREFERENCES, ['as it is', 'louder']],
    ['the slow and quiet end', { muted: false, rate: 0.5, volume: 0.1 }, ['slower', 'quieter']],
    ['the fast end', { muted: false, rate: 2, volume: 0.5 }, ['faster']],
  ])('leaves out what would lead nowhere: %s', (_, sound, shut) => {
    show({ sound });
    const pads: HTMLButtonElement[] = screen.getAllByRole('button');
    expect(pads.filter(({ disabled }) => disabled).map(({ textContent }) => textContent.trim())).toEqual(
      shut,
    );
  });
});

describe('the voices of the device', () => {
  const offered = () => screen.queryAllByRole('option', { name: /\(/ }).map(({ textContent }) => textContent);
  const said = () => [words.looking, words.noVoice].filter((sentence) => screen.queryByText(sentence));

  test('are waited for, and shown when they come', async () => {
    const { change } = show();
    expect({ offered: offered(), said: said() }).toEqual({ offered: [], said: [words.looking] });
    await change({ voices: [anna] });
    expect({ offered: offered(), said: said() }).toEqual({ offered: ['Anna (en-GB)'], said: [] });
  });

  test('are none in one sentence, until one comes after all', async () => {
    const { change } = show({ voices: [] });
    expect({ offered: offered(), said: said() }).toEqual({ offered: [], said: [words.noVoice] });
    await change({ voices: [far] });
    expect(said()).toEqual([]);
  });

  test('show the chosen one, and no other in its place when it is gone', async () => {
    const { change } = show({ sound: ANNA_CHOSEN, voices: [anna, far] });
    const select = screen.getByRole('combobox', { name: words.voice });
    expect(select).toHaveDisplayValue('Anna (en-GB)');
    await change({ sound: ANNA_CHOSEN, voices: [far] });
    expect(select).toHaveDisplayValue(words.anyVoice);
  });
});

describe('“say something”', () => {
  const told = () => Object.values(words.notSpoken).filter((sentence) => screen.queryByText(sentence));

  test('speaks a line that is captioned meanwhile', async () => {
    const { onsay, answer } = show();
    await press(words.say);
    expect(onsay).toHaveBeenCalledExactlyOnceWith(words.sample);
    expect(screen.getByText(words.sample)).toBeVisible();
    answer('spoken');
    await tick();
    expect(told()).toEqual([]);
  });

  test('tells when the device did not speak', async () => {
    const { answer } = show();
    await press(words.say);
    expect(told()).toEqual([]);
    answer('captioned');
    expect(await screen.findByText(words.notSpoken.failed)).toBeVisible();
  });

  test('tells at once that it is muted, and blames no device', async () => {
    const { answer } = show({ sound: { ...FIRST_SOUND_PREFERENCES, muted: true } });
    await press(words.say);
    expect(told()).toEqual([words.notSpoken.muted]);
    answer('captioned');
    await tick();
    expect(told()).toEqual([words.notSpoken.muted]);
  });

  test('does not take a line that the next press cut off for a silent device', async () => {
    const { answer } = show();
    await press(words.say);
    await press(words.say);
    answer('captioned', 0);
    answer('spoken', 1);
    await tick();
    expect(told()).toEqual([]);
  });
});
