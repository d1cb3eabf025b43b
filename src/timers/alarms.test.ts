import { describe, expect, test } from 'vitest';
import { SimulatedClock } from '../../tests/story/simulated-clock';
import type { Instant } from '../domain/unit';
import { tickedAlarms } from './alarms';

const TICK = 250;

function scene() {
  const clock = new SimulatedClock();
  const alarms = tickedAlarms(clock.now, { subscribe: (tick) => clock.every(TICK, tick) });
  const rung: string[] = [];
  const set = (name: string, due: number) =>
    alarms.at(due as Instant, () => rung.push(`${name} at ${String(clock.now())}`));
  return { clock, alarms, rung, set };
}

describe('alarms', () => {
  test('ring once, at the first tick at or after their instant, in the order in which they fell due', async () => {
    const { clock, rung, set } = scene();
    set('later', 740);
    set('sooner', 600);
    set('exact', 1000);
    await clock.pass(2000);
    expect(rung).toEqual(['sooner at 750', 'later at 750', 'exact at 1000']);
  });

  test('that were called off are silent, even by one that rings at the same tick', async () => {
    const { clock, alarms, rung, set } = scene();
    const callOff = set('other', 700);
    alarms.at(600 as Instant, callOff);
    await clock.pass(2000);
    expect(rung).toEqual([]);
  });

  test('that fell due while the device slept ring late rather than never', async () => {
    const { clock, rung, set } = scene();
    set('due in a minute', 60_000);
    clock.sleep(300_000);
    await clock.pass(TICK);
    expect(rung).toEqual(['due in a minute at 300000']);
  });

  test('ring no more once they are stopped', async () => {
    const { clock, alarms, rung, set } = scene();
    set('never', 600);
    alarms.stop();
    await clock.pass(2000);
    expect(rung).toEqual([]);
  });
});
