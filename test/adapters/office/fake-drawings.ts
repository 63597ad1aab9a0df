import type { RangeAddress } from '../../../src/workbook/port';
import { refuse, type Kind } from './fake-client';
import type { FakeDrawing, FakeSheet } from './fake-workbook';

type Held = { sheet: FakeSheet; drawing: FakeDrawing };
type Series = FakeDrawing['series'][number];
type RangeIn = (range: object) => RangeAddress;

const set =
  (key: keyof FakeDrawing['looks'], writing: (sheet: FakeSheet) => void) =>
  ({ sheet, drawing }: Held, value: unknown): void => {
    writing(sheet);
    drawing.looks[key] = value as never;
  };

const whatBothHave = (writing: (sheet: FakeSheet) => void): Pick<Kind<Held>, 'read' | 'write'> => ({
  read: { name: ({ drawing }) => drawing.name, type: ({ drawing }) => drawing.type },
  write: {
    name: ({ sheet, drawing }, value) => {
      writing(sheet);
      drawing.name = String(value);
    },
    left: set('left', writing),
    top: set('top', writing),
    width: set('width', writing),
    height: set('height', writing),
  },
});

const leaf = <S>(write: Kind<S>['write']): Kind<S> => ({ write });

/** Series of a chart: the first comes with it, others are added. */
const seriesKind = (rangeIn: RangeIn): Kind<Series> => ({
  write: {
    name: (series, value) => void (series.name = String(value)),
    gapWidth: () => undefined,
  },
  members: (self) => ({
    setValues: (range: object) => self.queueAct(60, (series) => void (series.values = rangeIn(range))),
    setXAxisValues: (range: object) => self.queueAct(60, (series) => void (series.categories = rangeIn(range))),
    format: self.child<Series>(
      {
        members: (format) => ({
          fill: format.child<Series>(
            {
              members: (fill) => ({
                setSolidColor: (colour: string) => fill.queueAct(60, (series) => void (series.colour = colour)),
              }),
            },
            (x) => x,
          ),
        }),
      },
      (x) => x,
    ),
  }),
});

const chartKind = (writing: (sheet: FakeSheet) => void, rangeIn: RangeIn): Kind<Held> => ({
  ...whatBothHave(writing),
  members: (self) => ({
    delete: () =>
      self.queueAct(60, ({ sheet, drawing }) => void sheet.drawings.splice(sheet.drawings.indexOf(drawing), 1)),
    title: self.child<Held>(leaf({ text: set('title', writing) }), (x) => x),
    legend: self.child<Held>(leaf({ visible: () => undefined, position: () => undefined }), (x) => x),
    axes: {
      categoryAxis: self.child<Held>(leaf({ reversePlotOrder: () => undefined }), (x) => x),
      valueAxis: self.child<Held>(
        {
          write: { minimum: () => undefined },
          members: (axis) => ({
            title: axis.child<Held>(leaf({ text: set('valueTitle', writing), visible: () => undefined }), (x) => x),
          }),
        },
        (x) => x,
      ),
    },
    series: {
      getItemAt: (n: number) =>
        self.child(seriesKind(rangeIn), ({ drawing }) => drawing.series[n] ?? refuse('ItemNotFound')),
      add: (name: string) => {
        let made: Series | undefined;
        self.queueAct(60, ({ drawing }) => void drawing.series.push((made = { name })));
        return self.child(seriesKind(rangeIn), () => made);
      },
    },
  }),
});

const shapeKind = (writing: (sheet: FakeSheet) => void): Kind<Held> => {
  const both = whatBothHave(writing);
  return {
    ...both,
    write: { ...both.write, lockAspectRatio: () => undefined, altTextDescription: set('words', writing) },
    members: (self) => ({
      delete: () =>
        self.queueAct(60, ({ sheet, drawing }) => void sheet.drawings.splice(sheet.drawings.indexOf(drawing), 1)),
    }),
  };
};

const held = (sheet: FakeSheet, isChart: boolean): Held[] =>
  sheet.drawings.filter(({ type }) => (type === 'Chart') === isChart).map((drawing) => ({ sheet, drawing }));

const add = (sheet: FakeSheet, type: FakeDrawing['type'], more: Partial<FakeDrawing> = {}): Held => {
  const drawing: FakeDrawing = { type, name: `${type} ${sheet.drawings.length + 1}`, looks: {}, series: [], ...more };
  sheet.drawings.push(drawing);
  return { sheet, drawing };
};

export const chartsKind = (writing: (sheet: FakeSheet) => void, rangeIn: RangeIn): Kind<FakeSheet> => ({
  items: (sheet, self) => held(sheet, true).map((each) => self.child(chartKind(writing, rangeIn), () => each)),
  members: (self) => ({
    add: (type: string, range: object, by: string) => {
      let made: Held | undefined;
      self.queueAct(200, (sheet) => {
        writing(sheet);
        const values = rangeIn(range);
        if (by !== 'Columns' || values.columns !== 1) refuse('InvalidArgument', 'one column, taken as a series');
        made = add(sheet, 'Chart', { chart: type, series: [{ values }] });
      });
      return self.child(chartKind(writing, rangeIn), () => made);
    },
  }),
});

export const shapesKind = (writing: (sheet: FakeSheet) => void): Kind<FakeSheet> => ({
  items: (sheet, self) => held(sheet, false).map((each) => self.child(shapeKind(writing), () => each)),
  members: (self) => ({
    addImage: (png: string) => {
      let made: Held | undefined;
      self.queueAct(100 + png.length, (sheet) => {
        writing(sheet);
        made = add(sheet, 'Image', { png });
      });
      return self.child(shapeKind(writing), () => made);
    },
  }),
});

/** Print set-up; without a printer it fails. */
export const pageLayoutKind = (hasPrinter: () => boolean): Kind<FakeSheet> => {
  const setUp = (key: string) => (sheet: FakeSheet, value: unknown) => {
    if (!hasPrinter()) refuse('GeneralException', 'no printer');
    sheet.print[key] = value;
  };
  return {
    write: { orientation: setUp('orientation'), zoom: setUp('zoom') },
    members: (self) => ({
      headersFooters: {
        defaultForAllPages: self.child<FakeSheet>(
          { write: { leftFooter: setUp('leftFooter'), rightFooter: setUp('rightFooter') } },
          (sheet) => sheet,
        ),
      },
    }),
  };
};
