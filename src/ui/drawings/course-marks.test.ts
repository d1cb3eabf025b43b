import { describe, expect, test } from 'vitest';
import { courseOf } from './course-marks';

const reached = (course: ReturnType<typeof courseOf>) =>
  course.marks.filter((mark) => mark.reached).map(({ place }) => place);

describe('the graduated edge', () => {
  test('is empty before the first act', () =>
    expect(courseOf('prepare', 0)).toMatchObject({ level: 0, nth: 1, of: 22 }));

  test('rises within a phase with its acts', () =>
    expect(courseOf('clean', 0.5).level).toBeCloseTo(1.5 / 22, 10));

  test('stands at a gate', () => {
    const course = courseOf('proving mixed', 0);
    expect(course.level).toBeCloseTo(4 / 22, 10);
    expect(reached(course)).toEqual(['prepare', 'clean', 'sanitise', 'mix', 'proving mixed']);
  });

  test('has a flag for each of the five gates', () =>
    expect(courseOf('prepare', 0).marks.filter(({ gate }) => gate)).toHaveLength(5));

  test('is full when the batch has ended', () =>
    expect(courseOf('finished', 0)).toMatchObject({ level: 1, nth: 22 }));
});
