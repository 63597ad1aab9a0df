import type { Translations } from '../wording';

export const level: Translations = {};
