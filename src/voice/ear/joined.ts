/** One stretch of sound, and the next. */
export function joined(one: Float32Array, other: Float32Array): Float32Array<ArrayBuffer> {
  const all = new Float32Array(one.length + other.length);
  all.set(one);
  all.set(other, one.length);
  return all;
}
