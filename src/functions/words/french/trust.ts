import type { Translations } from '../wording';

export const trust: Translations = {};
