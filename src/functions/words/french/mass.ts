import type { Translations } from '../wording';

export const mass: Translations = {};
