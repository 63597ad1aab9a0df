import type { Surroundings } from '../../pane/surroundings';
import type { Saving } from './save';

/** The pane's way to a copy for a customer: of the opened file with what was done here. */
export const shareFrom =
  (saving: Pick<Saving, 'bytes'>, endEditing: () => Promise<void>): NonNullable<Surroundings['shareCopy']> =>
  async (choices, toldIn) => {
    const { shareInPage } = await import(/* webpackChunkName: "share" */ '../share-in-page');
    await endEditing();
    return shareInPage(await saving.bytes(), choices, toldIn);
  };
