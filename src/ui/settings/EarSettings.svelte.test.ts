import { render, screen } from '@testing-library/svelte';
import { expect, test } from 'vitest';
import { FIRST_EAR_PREFERENCES } from '../../domain/ear-preferences';
import { en as text } from '../../text/en';
import EarSettings from './EarSettings.svelte';

const show = (browserHears: boolean) =>
  render(EarSettings, { ear: FIRST_EAR_PREFERENCES, browserHears, text, onchoose: () => undefined });

test('what becomes of what is said, and what has to be fetched, is told beforehand', () => {
  show(true);
  expect(screen.getByText(/4\.4 megabytes are fetched once/)).toHaveTextContent('stays on this device');
});

test('ears of the browser that do not keep to the device cannot be chosen, and it is said why', () => {
  show(false);
  expect(screen.queryByRole('radio', { name: text.ears.settings.whos.browser })).toBeNull();
  expect(screen.getByText(text.ears.settings.absent)).toBeInTheDocument();
});
