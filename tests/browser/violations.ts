import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** What axe finds wrong with the page as it stands: the rule, and where. */
export const violations = async (page: Page): Promise<{ id: string; at: string[] }[]> =>
  (await new AxeBuilder({ page }).analyze()).violations.map(({ id, nodes }) => ({
    id,
    at: nodes.map(({ html }) => html),
  }));
