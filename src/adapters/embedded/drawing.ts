import { IRenderManagerService } from '@univerjs/engine-render';
import type { Services } from './host';

/** Each turn of a long action would draw the whole grid again; this stops that until the returned function is called. */
export const pauseDrawing = (services: Services): (() => void) => {
  if (!services.injector.has(IRenderManagerService)) return () => undefined;
  const grid = services.injector.get(IRenderManagerService).getRenderById(services.workbook().getUnitId());
  grid?.deactivate();
  return () => grid?.activate();
};
