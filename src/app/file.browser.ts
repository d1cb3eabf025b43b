import { ProblemError } from '../domain/problem';
import type { Files } from './ports';

/** A kit sheet or a batch is some hundreds of kilobytes at most; a video picked by mistake is not read at all. */
const LARGEST = 8_000_000;

/** Files from and to the device, one at a time. */
export const files: Files = { pick, save };

function pick(): Promise<string | undefined> {
  const input = document.createElement('input');
  input.type = 'file';
  input.accept = '.json,application/json';
  return new Promise((resolve, reject) => {
    input.addEventListener('cancel', () => resolve(undefined));
    input.addEventListener('change', () => {
      read(input.files?.[0]).then(resolve, reject);
    });
    input.click();
  });
}

async function read(file: File | undefined): Promise<string | undefined> {
  if (file === undefined) return undefined;
  if (file.size > LARGEST) throw new ProblemError({ code: 'file-unreadable' });
  try {
    return await file.text();
  } catch (cause) {
    throw new ProblemError({ code: 'file-unreadable' }, cause);
  }
}

function save(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The download has begun by then, and a browser that asks where to put it keeps its own copy.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
