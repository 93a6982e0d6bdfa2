/** What a task comes to on a build, worked out once: builds are plain data that nobody changes. */
import type { Task } from './codes.ts';
import type { Build } from './machine.ts';

export function keptPerBuild<T>(workOut: (task: Task, build: Build) => T): (task: Task, build: Build) => T {
  const kept = new WeakMap<Build, Map<Task, T>>();
  return (task, build) => {
    let ofBuild = kept.get(build);
    if (!ofBuild) kept.set(build, (ofBuild = new Map()));
    const known = ofBuild.get(task);
    if (known !== undefined) return known;
    const worked = workOut(task, build);
    ofBuild.set(task, worked);
    return worked;
  };
}
