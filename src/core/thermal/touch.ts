/** Order of the thresholds of ISO 13732-1 and -3, from memory; they depend on material and contact time. */
const HOT = 45;
const COLD = 0;

const shown = (temperature: number): string => String(Number(temperature.toPrecision(4))).replace('-', '−');

/** Caution text for people who handle a surface between these temperatures (°C). */
export const touchCaution = (low: number, high: number): string => {
  const warnings = [
    high >= HOT
      ? `Hot: up to ${shown(high)} °C. Mark “let cool before handling”, state the cooling time, wear gloves`
      : undefined,
    low <= COLD ? `Cold: down to ${shown(low)} °C. Bare skin can freeze to metal, wear dry gloves` : undefined,
  ].filter((text) => text !== undefined);
  return warnings.length > 0
    ? `${warnings.join('. ')}; local rules decide.`
    : 'No touch caution from the temperature alone; local rules decide.';
};
