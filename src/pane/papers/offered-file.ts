/** A file that lies ready in this page; nothing of it leaves the machine. */
export interface OfferedFile {
  readonly name: string;
  readonly url: string;
}

export const offerFile = (text: string, name: string, type: string): OfferedFile => ({
  name,
  url: URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` })),
});

export const saveFile = ({ name, url }: OfferedFile): void => {
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
};

/** False where the program lets no window open. */
export const openFile = ({ url }: OfferedFile): boolean => window.open(url, '_blank') !== null;

export const forgetFile = (file: OfferedFile | undefined): void => {
  if (file) URL.revokeObjectURL(file.url);
};
