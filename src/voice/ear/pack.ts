/** A part of the pack: its numbers lie byte plane by byte plane, maybe as differences, so that gzip leaves less. */
type Part = { name: string; size: number; planes: number; differences: boolean };
type Header = { sounds: readonly string[]; parts: readonly Part[] };

/** What the ear is made of, as `tests/tools/ear/pack.mjs` packed it. */
export type Pack = {
  /** What each letter of a spoken word stands for, from `A` on. */
  sounds: readonly string[];
  part: (name: string) => Uint8Array<ArrayBuffer>;
};

const LENGTH = 4;

export async function unpack(packed: Uint8Array<ArrayBuffer>): Promise<Pack> {
  const raw = await gunzip(packed);
  const length = new DataView(raw.buffer).getUint32(0, true);
  const header = JSON.parse(new TextDecoder().decode(raw.subarray(LENGTH, LENGTH + length))) as Header;
  const parts = new Map<string, Uint8Array<ArrayBuffer>>();
  let at = LENGTH + length;
  for (const part of header.parts) {
    parts.set(part.name, restored(raw.subarray(at, at + part.size), part));
    at += part.size;
  }
  return {
    sounds: header.sounds,
    part(name) {
      const bytes = parts.get(name);
      if (!bytes) throw new Error(`The pack has no ${name}`);
      return bytes;
    },
  };
}

async function gunzip(packed: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer>> {
  const plain = new Response(packed).body?.pipeThrough(new DecompressionStream('gzip'));
  return new Uint8Array(await new Response(plain ?? null).arrayBuffer());
}

function restored(laidOut: Uint8Array<ArrayBuffer>, { planes, differences }: Part): Uint8Array<ArrayBuffer> {
  const bytes = laidOut.slice();
  if (differences)
    for (let at = 1; at < bytes.length; at++) bytes[at] = (bytes[at] ?? 0) + (bytes[at - 1] ?? 0);
  if (planes === 1) return bytes;
  const rows = Math.floor(bytes.length / planes);
  const whole = bytes.slice();
  for (let plane = 0; plane < planes; plane++)
    for (let row = 0; row < rows; row++) whole[row * planes + plane] = bytes[plane * rows + row] ?? 0;
  return whole;
}
