import type { OpensView, WeekView } from '../../generated/bridge';

/** Neighbouring weeks with the same stages, told together. */
export type Run = {
    first: number;
    last: number;
    now: boolean;
    stages: string[];
    gates: OpensView[];
};

export function runsOf(weeks: readonly WeekView[]): Run[] {
    const runs: Run[] = [];
    for (const { number, now, stages, gates } of weeks) {
        const run = runs.at(-1);
        if (run && run.stages.join('\n') === stages.join('\n')) {
            run.last = number;
            run.now ||= now;
            run.gates.push(...gates);
        } else {
            runs.push({ first: number, last: number, now, stages, gates: [...gates] });
        }
    }
    return runs;
}
