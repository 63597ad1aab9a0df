import type { Plugin, PluginCtor } from '@univerjs/core';

export type PluginEntry = PluginCtor<Plugin> | [PluginCtor<Plugin>, unknown?];
export interface NamedPlugin {
  readonly plugin: PluginCtor<Plugin>;
  options: unknown;
}

/** Several presets bring the same plug-in; each may be registered once, and the last options count. */
export const pluginsByName = (entries: readonly PluginEntry[]): Map<string, NamedPlugin> => {
  const found = new Map<string, NamedPlugin>();
  for (const entry of entries) {
    const [plugin, options] = Array.isArray(entry) ? entry : [entry];
    found.set((plugin as unknown as { pluginName: string }).pluginName, { plugin, options });
  }
  return found;
};
