import type { Translations } from '../wording';

export const text: Translations = {};
