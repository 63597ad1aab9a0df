/** The colours of the Office around the pane. Some hosts do not say them, and some do not say when they change. */
export const officeTheme = () => {
  let changed: string | undefined;
  return {
    background: (): string | undefined =>
      changed ?? (Office.context as Partial<Office.Context>).officeTheme?.bodyBackgroundColor,
    onChange(listener: () => void): void {
      const event = (Office.EventType as Partial<typeof Office.EventType> | undefined)?.OfficeThemeChanged;
      const document = Office.context.document as Partial<Office.Document> | undefined;
      if (!event || !document?.addHandlerAsync) return;
      const follow = (now: { officeTheme?: { bodyBackgroundColor?: string } }): void => {
        changed = now.officeTheme?.bodyBackgroundColor;
        listener();
      };
      try {
        document.addHandlerAsync(event, follow, () => undefined);
      } catch {
        // A host that knows the name and not the event: the theme then changes when the pane is opened again.
      }
    },
  };
};
