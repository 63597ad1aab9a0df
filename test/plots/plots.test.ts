import { SaxesParser } from 'saxes';
import fixture from '../fixtures/cases.json';
import { LANGUAGES } from '../../src/core/language';
import { checkChannels } from '../../src/plan/check';
import { readJsonPlan } from '../../src/plan/json-plan';
import { levelLadder } from '../../src/plots/level-ladder';
import { widthOf, type Mark, type Plot } from '../../src/plots/plot';
import { spanBar } from '../../src/plots/span-bar';
import { elementOf, svgText } from '../../src/plots/svg';
import { thermalStrip } from '../../src/plots/thermal-strip';

// Positions are held against the numbers of cases.json, computed independently with Python/scipy.
const { plan } = readJsonPlan({ ...fixture, panel_sums: undefined });
const rows = checkChannels(plan.channels, plan.limits).map((check) => ({ label: check.channel.id, check }));
const options = { width: 320, limits: plan.limits, language: 'en' } as const;
const PLOTS = { levelLadder, spanBar, thermalStrip } as const;

type Of<K extends Mark['kind']> = Extract<Mark, { kind: K }>;
const of = <K extends Mark['kind']>({ marks }: Plot, kind: K): Of<K>[] =>
  marks.filter((mark): mark is Of<K> => mark.kind === kind);
/** Horizontal distance of one decade: between neighbouring hairlines. */
const decadeOf = (plot: Plot): number => {
  const x = of(plot, 'line')
    .filter(({ tone }) => tone === 'hair')
    .map(({ x1 }) => x1);
  expect(x.length).toBeGreaterThan(2);
  return x[1]! - x[0]!;
};
/** Bars of rows, without the samples of the legend. */
const barsOf = (plot: Plot, tone: Mark['tone']) =>
  of(plot, 'rect')
    .filter((bar) => bar.tone === tone)
    .slice(1);

it.each(fixture.cases.map(({ id, expected }, i) => [id, expected, rows[i]!] as const))(
  '%s: the ladder’s bar is as many decades long as upper limit over noise',
  (_id, { level }, row) => {
    const plot = levelLadder([row], options);
    const [bar] = barsOf(plot, 'span');
    const { noise_rms_gn: noise, upper_limit_gn: ceiling } = level as { noise_rms_gn: number; upper_limit_gn: number };
    expect(bar!.width / decadeOf(plot)).toBeCloseTo(Math.log10(ceiling / noise), 6);
  },
);

it.each(
  fixture.cases.flatMap(({ id, expected: { frequency } }, i) => {
    const span = (frequency as { span_5_percent?: { low_Hz: number; high_Hz: number } | null }).span_5_percent;
    return span && span.low_Hz > 0 ? [[id, span, rows[i]!] as const] : [];
  }),
)('%s: the span’s bar is as many decades long as its ends', (_id, span, row) => {
  const plot = spanBar([row], options);
  const [bar] = barsOf(plot, 'span');
  expect(bar!.width / decadeOf(plot)).toBeCloseTo(Math.log10(span.high_Hz / span.low_Hz), 6);
});

it('the thermal strip draws the needed temperatures as far apart as the axis says', () => {
  const [first] = fixture.cases;
  const plot = thermalStrip([rows[0]!], options);
  const ticks = of(plot, 'text').filter(({ text, anchor }) => anchor === 'middle' && /^[−\d]+$/.test(text));
  const [a, b] = [ticks[1]!, ticks[2]!].map(({ x, text }) => [x, Number(text.replace('−', '-'))] as const);
  const perDegree = (b![0] - a![0]) / (b![1] - a![1]);
  const needed = of(plot, 'line').find(({ tone, width, y1, y2, x2, x1 }) => tone === 'ink' && width === 3 && y1 === y2 && x2 - x1 > 30)!; // prettier-ignore
  const { temperature_min_degC: low, temperature_max_degC: high } = first!.requirement;
  expect((needed.x2 - needed.x1) / perDegree).toBeCloseTo(high - low, 6);
});

describe.each(Object.entries(PLOTS))('%s', (_name, draw) => {
  it.each(LANGUAGES)('says in words what it shows, verdict by word, in %s', (language) => {
    const plot = draw(rows, { ...options, language });
    for (const { label } of rows) expect(plot.inWords).toContain(`${label}: `);
    const verdicts = plot.inWords.match(/PASS|WARN|FAIL|INCOMPLETE/g);
    expect(verdicts!.length).toBeGreaterThanOrEqual(rows.length);
    if (language !== 'en') expect(plot.inWords).not.toMatch(/\d\.\d/);
  });

  it.each(LANGUAGES.flatMap((language) => [240, 320, 680].map((width) => [language, width] as const)))(
    'keeps every mark inside its frame, in %s at %i',
    (language, width) => {
      const plot = draw(rows, { ...options, width, language });
      for (const mark of of(plot, 'text')) {
        const length = widthOf(mark.text);
        const left = mark.anchor === 'end' ? mark.x - length : mark.anchor === 'middle' ? mark.x - length / 2 : mark.x;
        expect([mark.text, left >= -0.5, left + length <= width + 0.5]).toEqual([mark.text, true, true]);
        expect(mark.y).toBeLessThanOrEqual(plot.height);
      }
      for (const { x, width: long } of of(plot, 'rect')) expect(x >= 0 && x + long <= width + 1e-9).toBe(true);
      for (const { x1, x2 } of of(plot, 'line')) expect(Math.min(x1, x2) >= 0 && Math.max(x1, x2) <= width).toBe(true);
    },
  );

  it('shows a channel of which nothing is known without a number', () => {
    const [nothing] = checkChannels(
      [{ id: 'N', requirement: { detector: { kind: 'band' }, localMass: [] } }],
      plan.limits,
    );
    const plot = draw([{ label: 'N', check: nothing! }], options);
    expect(plot.inWords).toContain('not known');
    const numbers = plot.marks.flatMap((mark) => Object.values(elementOf(mark).attributes));
    expect(numbers.filter((value) => typeof value === 'number' && !Number.isFinite(value))).toEqual([]);
    expect(numbers.join(' ')).not.toMatch(/NaN|Infinity/);
  });

  it('is well-formed SVG, whatever stands in a label', () => {
    const label = '<script>alert("1")</script> & \u0001';
    const seen: string[] = [];
    const parser = new SaxesParser();
    parser.on('text', (text) => seen.push(text));
    parser.on('error', (error) => {
      throw error;
    });
    parser.write(svgText(draw([{ label, check: rows[0]!.check }], { ...options, width: 680 }))).close();
    expect(seen.join('')).toContain('<script>alert("1")</script> & ');
  });
});
