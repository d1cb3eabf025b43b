import type { CDPSession, Page } from '@playwright/test';

/** A node of the accessibility tree, in the order in which it is read. */
type Node = {
  nodeId: string;
  parentId?: string;
  childIds?: string[];
  ignored: boolean;
  role?: { value: string };
  name?: { value: string };
  properties?: { name: string; value: { value?: unknown } }[];
};

const PRESSED_OR_FILLED = new Set([
  'button',
  'checkbox',
  'combobox',
  'link',
  'radio',
  'slider',
  'spinbutton',
  'textbox',
]);

const property = (node: Node, wanted: string) =>
  node.properties?.find(({ name }) => name === wanted)?.value.value;
const named = (node: Node) => (node.name?.value ?? '').trim();

/** The accessibility tree of a page, as a screen reader is handed it. */
export class Tree {
  private constructor(private readonly nodes: ReadonlyMap<string, Node>) {}

  static async of(page: Page): Promise<Tree> {
    const session: CDPSession = await page.context().newCDPSession(page);
    const { nodes } = (await session.send('Accessibility.getFullAXTree')) as unknown as { nodes: Node[] };
    await session.detach();
    return new Tree(new Map(nodes.map((node) => [node.nodeId, node])));
  }

  /** What is wrong on a screen of the bench, in words; nothing, where nothing is. */
  faults(pads: string): string[] {
    const read = [...this.#read()];
    const headings = read.filter(({ role }) => role?.value === 'heading');
    const levels = headings.map((heading) => Number(property(heading, 'level')));
    const titles = headings.filter((_, nth) => levels[nth] === 1);
    const nameless = read.filter(
      (node) => PRESSED_OR_FILLED.has(node.role?.value ?? '') && named(node) === '',
    );
    // The page itself has the focus whenever its window has.
    const isFocused = read.some(
      (node) => property(node, 'focused') === true && node.role?.value !== 'RootWebArea',
    );
    const group = read.find((node) => node.role?.value === 'group' && named(node) === pads);
    return [
      ...(titles.length === 1 ? [] : [`${String(titles.length)} headings of the first level`]),
      ...titles.filter((title) => !this.#isAnnounced(title)).map((title) => `not announced: ${named(title)}`),
      ...levels
        .filter((level, nth) => level > (levels[nth - 1] ?? 0) + 1)
        .map((level) => `a heading of level ${String(level)} skips one`),
      ...nameless.map(({ role }) => `a ${role!.value} without a name`),
      ...(isFocused ? [] : ['the focus is nowhere']),
      ...(group && this.#holds(group, 'button') ? [] : ['no group of pads by its name']),
    ];
  }

  /** From the root on, parents before children, without what is hidden. */
  *#read(
    node: Node | undefined = [...this.nodes.values()].find(({ parentId }) => !parentId),
  ): Generator<Node> {
    if (!node) return;
    if (!node.ignored) yield node;
    for (const id of node.childIds ?? []) {
      const child = this.nodes.get(id);
      if (child) yield* this.#read(child);
    }
  }

  #holds(node: Node, role: string): boolean {
    return [...this.#read(node)].some((held) => held.role?.value === role);
  }

  #isAnnounced(node: Node): boolean {
    if (property(node, 'focused') === true) return true;
    for (let up: Node | undefined = node; up; up = up.parentId ? this.nodes.get(up.parentId) : undefined)
      if (['polite', 'assertive'].includes(String(property(up, 'live')))) return true;
    return false;
  }
}
