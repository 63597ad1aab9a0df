import type { Translations } from '../wording';
import { choosing } from './choosing';
import { envelope } from './envelope';
import { frequency } from './frequency';
import { level } from './level';
import { mass } from './mass';
import { text } from './text';
import { thermal } from './thermal';
import { trust } from './trust';
import { verdict } from './verdict';

export const GERMAN: Translations = {
  ...level,
  ...frequency,
  ...mass,
  ...thermal,
  ...verdict,
  ...trust,
  ...text,
  ...choosing,
  ...envelope,
};
