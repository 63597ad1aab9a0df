import { join } from 'node:path';
import { buildSync } from 'esbuild';
import type { Browser, Page } from 'playwright-core';
import type { AssignOptions } from '../../src/plan/assign/options';
import type { Stock } from '../../src/plan/choosing/candidate';
import { DEFAULT_LIMITS } from '../../src/plan/limits';
import type { Channel, SensorType } from '../../src/plan/model';
import { randomChannel, seeded } from '../plan/choosing/random-channels';

declare global {
  interface Window {
    assigning: typeof import('../../src/adapters/solver/browser-assigner');
  }
}

/** A page of the workbench with our side of the worker in it; the worker is the one that was built. */
export const openAssignerPage = async (root: string, browser: Browser, address: string): Promise<Page> => {
  const { outputFiles } = buildSync({
    stdin: {
      contents: `import * as assigning from './browser-assigner'; window.assigning = assigning;`,
      resolveDir: join(root, 'src/adapters/solver'),
      loader: 'ts',
    },
    bundle: true,
    format: 'iife',
    write: false,
  });
  const page = await browser.newPage();
  await page.goto(`${address}workbench.html`);
  await page.evaluate(outputFiles[0]!.text);
  return page;
};

export interface Question {
  readonly channels: readonly Channel[];
  readonly stock: Stock;
  readonly options?: Omit<AssignOptions, 'signal' | 'onProgress'>;
}

/** Channels that all differ, and types made for a few of them. No part is named, all are free. */
export const randomQuestion = (channels: number, types: number, options?: Question['options']): Question => {
  const random = seeded(20261126);
  const models = Array.from({ length: 8 }, () => randomChannel(random));
  const stretched = <T>(value: T): T =>
    typeof value === 'number' ? ((value * 1.5 ** (2 * random() - 1)) as T) : value;
  return {
    channels: Array.from({ length: channels }, (_, i) => {
      const { requirement } = models[i % models.length]!;
      const levelHigh = stretched(requirement.levelHigh);
      return { id: `channel ${i}`, group: `part ${i % 12}`, requirement: { ...requirement, levelHigh } };
    }),
    stock: {
      sensors: Array.from({ length: types }, (_, i): SensorType => {
        const sensor = models[i % models.length]!.sensor!;
        const name = `type ${i}`;
        return { ...sensor, name, quantity: 1 + (i % 5), fullScale: stretched(sensor.fullScale), mass: stretched(sensor.mass) }; // prettier-ignore
      }),
      mounts: models.map(({ mount }, i) => ({ ...mount!, name: `mount ${i}` })),
      cables: models.map(({ cable }, i) => ({ ...cable!, name: `cable ${i}` })),
      inputs: models.map(({ input }, i) => ({ ...input!, name: `input ${i}` })),
    },
    options,
  };
};

/** Who got what, as plain texts. */
export const gotten = (
  assigned: readonly {
    readonly channel: number;
    readonly combination: Partial<Record<'sensor' | 'mount' | 'cable' | 'input', { readonly name: string }>>;
    readonly verdict: string;
    readonly margin?: number;
    readonly piece: number;
  }[],
): readonly string[] =>
  // prettier-ignore
  assigned.map(({ channel, combination: { sensor, mount, cable, input }, verdict, margin, piece }) =>
    [channel, sensor?.name, mount?.name, cable?.name, input?.name, verdict, margin, piece].join(' | '),
  );

/** Assigns in the worker of the page; `cancelAfter` in milliseconds. */
export const assignInPage = async (page: Page, question: Question, cancelAfter?: number) => {
  const found = await page.evaluate(
    async ({ text, limits, cancel }) => {
      const { channels, stock, options }: Question = JSON.parse(text);
      const controller = new AbortController();
      if (cancel !== undefined) setTimeout(() => controller.abort(), cancel);
      let isRunning = true;
      let longestFrame = 0;
      let last = performance.now();
      const beat = (): void => {
        const now = performance.now();
        longestFrame = Math.max(longestFrame, now - last);
        last = now;
        if (isRunning) setTimeout(beat, 0);
      };
      beat();
      const steps: string[] = [];
      let judged = 0;
      const start = performance.now();
      const { status, assigned, unserved, cost, gap } = await window.assigning.browserAssigner(
        channels,
        stock,
        limits,
        {
          ...options,
          signal: controller.signal,
          onProgress: ({ step }) => {
            if (step === 'judging') judged = performance.now() - start;
            if (steps.at(-1) !== step) steps.push(step);
          },
        },
      );
      const milliseconds = performance.now() - start;
      isRunning = false;
      // What comes back must be the objects that were asked about.
      const isOwn = assigned.every(({ combination }) => stock.sensors.includes(combination.sensor));
      return {
        status,
        assigned,
        unserved: unserved.length,
        cost,
        gap,
        isOwn,
        steps,
        judged,
        milliseconds,
        longestFrame,
      };
    },
    { text: JSON.stringify(question), limits: DEFAULT_LIMITS, cancel: cancelAfter },
  );
  return { ...found, gotten: gotten(found.assigned) };
};
