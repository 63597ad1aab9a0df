import type { InLanguages } from '../../core/language';
import type { ShareProposals } from '../../workbook/share/proposals';

export interface ShareWords {
  readonly title: string;
  readonly note: string;
  readonly text: string;
  readonly leaveOut: string;
  readonly nothing: string;
  readonly all: string;
  readonly sheet: (name: string) => string;
  readonly why: Readonly<Record<ShareProposals['sheets'][number]['why'], string>>;
  readonly saidTitle: string;
  readonly said: Readonly<Record<'title' | 'revision' | 'date' | 'prepared' | 'checked', string>>;
  readonly dropNotes: string;
  readonly language: string;
  readonly paper: string;
  readonly values: string;
  readonly keepLinks: string;
  readonly keepPeople: string;
  readonly protect: string;
  readonly make: string;
  readonly ready: string;
  readonly perhaps: string;
  readonly fileName: string;
  readonly notHere: string;
  readonly failed: string;
}

export const SHARE_WORDS: InLanguages<ShareWords> = {
  en: {
    title: 'Copy for a customer',
    note: 'opens without this add-in',
    text: 'A workbook of its own with our numbers as values, notes on open rows and an overview. Yours stays as it is.',
    leaveOut: 'Leave out',
    nothing: 'No column or sheet looks like prices, serial numbers or remarks.',
    all: 'Every other column and sheet',
    sheet: (name) => `Sheet ${name}`,
    why: { price: 'price', serial: 'serial number', remark: 'remark', supplier: 'supplier', internal: 'internal', hidden: 'hidden' }, // prettier-ignore
    saidTitle: 'Title, revision and names',
    said: { title: 'Title', revision: 'Revision', date: 'Date', prepared: 'Prepared by', checked: 'Checked by' },
    dropNotes: 'Leave out your notes on cells',
    language: 'Language of the copy',
    paper: 'Paper, if unset',
    values: 'Your formulas as values too',
    keepLinks: 'Keep links to other files and data',
    keepPeople: 'Keep names of authors',
    protect: 'Lock sheets against accidents (no password)',
    make: 'Make the copy',
    ready: 'Ready:',
    perhaps: 'If nothing was saved, this program lets no add-in save files: press the link, or use the workbench or the command “share”.', // prettier-ignore
    fileName: 'for the customer',
    notHere: 'This program does not hand its workbook to add-ins. Save the workbook, then open it in the workbench or use the command “channelwright share”.', // prettier-ignore
    failed: 'The copy could not be made.',
  },
  de: {
    title: 'Kopie für einen Kunden',
    note: 'öffnet ohne dieses Add-in',
    text: 'Eine eigene Mappe mit unseren Zahlen als Werten, Notizen an offenen Zeilen und einer Übersicht. Ihre bleibt, wie sie ist.', // prettier-ignore
    leaveOut: 'Weglassen',
    nothing: 'Keine Spalte und kein Blatt sieht nach Preisen, Seriennummern oder Bemerkungen aus.',
    all: 'Alle anderen Spalten und Blätter',
    sheet: (name) => `Blatt ${name}`,
    why: { price: 'Preis', serial: 'Seriennummer', remark: 'Bemerkung', supplier: 'Lieferant', internal: 'intern', hidden: 'ausgeblendet' }, // prettier-ignore
    saidTitle: 'Titel, Revision und Namen',
    said: { title: 'Titel', revision: 'Revision', date: 'Datum', prepared: 'Erstellt von', checked: 'Geprüft von' },
    dropNotes: 'Ihre Notizen an Zellen weglassen',
    language: 'Sprache der Kopie',
    paper: 'Papier, falls offen',
    values: 'Auch Ihre Formeln als Werte',
    keepLinks: 'Verknüpfungen und Datenverbindungen behalten',
    keepPeople: 'Namen von Verfassern behalten',
    protect: 'Blätter gegen Versehen sperren (ohne Kennwort)',
    make: 'Kopie erstellen',
    ready: 'Fertig:',
    perhaps: 'Falls nichts gespeichert wurde, lässt dieses Programm kein Add-in Dateien speichern: Drücken Sie den Verweis, oder nehmen Sie die Werkbank oder den Befehl „share“.', // prettier-ignore
    fileName: 'für den Kunden',
    notHere: 'Dieses Programm gibt Add-ins seine Mappe nicht heraus. Speichern Sie die Mappe und öffnen Sie sie in der Werkbank, oder nehmen Sie den Befehl „channelwright share“.', // prettier-ignore
    failed: 'Die Kopie konnte nicht erstellt werden.',
  },
  fr: {
    title: 'Copie pour un client',
    note: 's’ouvre sans ce complément',
    text: 'Un classeur à part avec nos nombres en valeurs, des notes aux lignes ouvertes et une synthèse. Le vôtre reste tel quel.', // prettier-ignore
    leaveOut: 'Omettre',
    nothing: 'Aucune colonne ni feuille ne ressemble à des prix, numéros de série ou remarques.',
    all: 'Toutes les autres colonnes et feuilles',
    sheet: (name) => `Feuille ${name}`,
    why: { price: 'prix', serial: 'numéro de série', remark: 'remarque', supplier: 'fournisseur', internal: 'interne', hidden: 'masquée' }, // prettier-ignore
    saidTitle: 'Titre, révision et noms',
    said: { title: 'Titre', revision: 'Révision', date: 'Date', prepared: 'Établi par', checked: 'Vérifié par' },
    dropNotes: 'Omettre vos notes de cellules',
    language: 'Langue de la copie',
    paper: 'Papier, à défaut',
    values: 'Vos formules en valeurs aussi',
    keepLinks: 'Garder les liaisons et connexions',
    keepPeople: 'Garder les noms des auteurs',
    protect: 'Verrouiller contre les accidents (sans mot de passe)',
    make: 'Créer la copie',
    ready: 'Prête :',
    perhaps: 'Si rien n’a été enregistré, ce programme n’en laisse pas le droit aux compléments : appuyez sur le lien, ou prenez l’établi ou la commande « share ».', // prettier-ignore
    fileName: 'pour le client',
    notHere: 'Ce programme ne remet pas son classeur aux compléments. Enregistrez-le, puis ouvrez-le dans l’établi ou prenez la commande « channelwright share ».', // prettier-ignore
    failed: 'La copie n’a pas pu être créée.',
  },
};
