import type { InLanguages } from '../../core/language';
import type { Verdict } from '../../core/verdict';
import type { Headline } from '../results';
import { english } from './words-english';
import { french } from './words-french';
import { german } from './words-german';

export interface ReportWords {
  readonly title: string;
  readonly channels: (count: string, sheet: string) => string;
  readonly allChannels: { readonly title: string; readonly text: string; readonly place: string };
  readonly facts: Readonly<Record<'object' | 'revision' | 'state' | 'prepared' | 'checked' | 'released', string>>;
  readonly counts: { readonly title: string; readonly text: string; readonly count: string; readonly share: string };
  readonly parts: { readonly title: string; readonly text: string; readonly all: string; readonly allChannels: string };
  readonly noPart: string;
  readonly none: string;
  readonly more: (names: string, count: number) => string;
  readonly checks: { readonly title: string; readonly text: string };
  readonly headlines: Readonly<Record<Headline, string>>;
  readonly headlineQuestions: Readonly<Record<Headline, string>>;
  readonly asked: { readonly title: string; readonly text: string; readonly more: (count: number) => string };
  readonly decisions: { readonly title: string; readonly text: string; readonly channel: string };
  readonly moreRows: (count: number) => string;
  readonly nothingOpen: string;
  readonly together: { readonly title: string; readonly text: string; readonly verdict: string };
  readonly unread: { readonly title: string; readonly text: string };
  readonly sensors: {
    readonly title: string;
    readonly text: string;
    readonly channels: string;
    readonly items: string;
    readonly spare: string;
    readonly stock: string;
    readonly short: string;
  };
  readonly technologies: { readonly title: string; readonly text: string };
  readonly notNamed: string;
  readonly mounts: { readonly title: string; readonly text: string };
  readonly cables: { readonly title: string; readonly text: string };
  readonly adhesives: { readonly title: string; readonly text: string; readonly points: string };
  readonly connections: {
    readonly title: string;
    readonly text: string;
    readonly atSensor: string;
    readonly atInput: string;
  };
  readonly modules: {
    readonly title: string;
    readonly text: string;
    readonly needed: string;
    readonly modules: string;
    readonly there: string;
    readonly free: string;
  };
  readonly inputs: { readonly title: string; readonly text: string };
  readonly due: { readonly title: string; readonly text: string; readonly date: string };
  readonly waits: { readonly title: string; readonly text: string; readonly corner: string; readonly wait: string };
  readonly control: { readonly title: string; readonly text: string };
  readonly controlNone: string;
  readonly controlSome: (count: number, passing: number) => string;
  readonly assumptions: { readonly title: string; readonly text: string };
  readonly assumed: {
    readonly purpose: (count: number) => string;
    readonly tolerance: (count: number) => string;
    readonly reference: (count: number, hertz: string) => string;
    readonly calibration: (degrees: string) => string;
    readonly spares: string;
  };
  readonly cautions: { readonly title: string; readonly text: string };
  readonly limits: { readonly title: string; readonly text: string; readonly unit: string };
  readonly limitNames: Readonly<Record<string, string>>;
  readonly legend: { readonly title: string; readonly text: string };
  readonly meaning: Readonly<Record<Verdict, string>>;
}

export const REPORT_WORDS: InLanguages<ReportWords> = { en: english, de: german, fr: french };
