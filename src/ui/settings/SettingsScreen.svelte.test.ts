import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { expect, test, vi } from 'vitest';
import { FIRST_PREFERENCES, type Preferences } from '../../domain/preferences';
import type { Problem } from '../../domain/problem';
import { en as text } from '../../text/en';
import { formatsFor } from '../../text/formats';
import SettingsScreen from './SettingsScreen.svelte';

function show(problem?: Problem) {
  const onchoose = vi.fn((_: Preferences) => Promise.resolve(problem));
  const formats = formatsFor({ preferences: FIRST_PREFERENCES, language: 'en' });
  const onsay = () => Promise.resolve('spoken' as const);
  const browserHears = Promise.resolve(true);
  render(SettingsScreen, {
    preferences: FIRST_PREFERENCES,
    text,
    formats,
    voices: [],
    browserHears,
    onchoose,
    onsay,
  });
  return onchoose;
}

test.each([
  ['US gallons', { volume: 'US gallons' }],
  ['Imperial gallons', { volume: 'imperial gallons' }],
  ['Fahrenheit (°F)', { temperature: '°F' }],
  ['Dark, for the cellar', { theme: 'dark' }],
] as const)('choosing “%s” is handed on at once, and nothing else changes', async (name, change) => {
  const onchoose = show();
  await userEvent.click(screen.getByRole('radio', { name }));
  expect(onchoose).toHaveBeenCalledExactlyOnceWith({ ...FIRST_PREFERENCES, ...change });
  expect(await screen.findByText('Kept on this device.')).toBeInTheDocument();
});

test('the free hour is one of twenty-four', async () => {
  const onchoose = show();
  expect(screen.getAllByRole('option')).toHaveLength(24);
  await userEvent.selectOptions(screen.getByRole('combobox'), '07:00');
  expect(onchoose).toHaveBeenCalledExactlyOnceWith({ ...FIRST_PREFERENCES, freeHour: 7 });
});

test('a choice that cannot be kept says so', async () => {
  show({ code: 'storage-refused' });
  await userEvent.click(screen.getByRole('radio', { name: 'US gallons' }));
  expect(await screen.findByRole('alert')).toHaveTextContent('This browser lets nothing be kept');
});

test.each([
  ['nobody', { who: 'none', on: false }],
  ['the browser’s ears, on this device', { who: 'browser', on: false }],
] as const)('who listens can be %s, and is turned on at the bench alone', async (name, ear) => {
  const onchoose = show();
  await userEvent.click(await screen.findByRole('radio', { name }));
  expect(onchoose).toHaveBeenCalledExactlyOnceWith({ ...FIRST_PREFERENCES, ear });
});
