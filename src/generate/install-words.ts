import type { InLanguages } from '../core/language';

export interface InstallSection {
  readonly heading: string;
  readonly before?: string;
  readonly steps?: readonly string[];
  readonly points?: readonly string[];
}
export interface InstallWords {
  readonly title: string;
  readonly lead: readonly string[];
  readonly sections: readonly InstallSection[];
}

export const INSTALL_WORDS: InLanguages<InstallWords> = {
  en: {
    title: 'Install, upgrade, remove',
    lead: [
      'Excel needs one file to know the add-in: [manifest.xml](manifest.xml). It names the pages on this site; nothing else is installed. Save it to disk (right-click, Save link as).',
      'Needed: Excel of Microsoft 365 on Windows or Mac, or Excel on the web. Microsoft’s own pages differ on whether Excel 2021 bought once runs worksheet functions of add-ins; later ones do, Excel on iPad does not. The steps follow Microsoft’s documentation as of 2026; names of menus change now and then.',
    ],
    sections: [
      {
        heading: 'One person: Excel on the web',
        steps: [
          'Open a workbook, choose Home, Add-ins, More settings, Upload My Add-in, and pick manifest.xml.',
          'Choose Plan channels on the Home tab. The add-in stays in this browser until its data are cleared.',
        ],
      },
      {
        heading: 'One person: Excel on Windows',
        steps: [
          'Put manifest.xml into a folder of its own that is shared (folder properties, Sharing), even if only with yourself, and note its network name such as `\\\\machine\\addins`.',
          'Excel: File, Options, Trust Center, Trust Center Settings, Trusted Add-in Catalogs. Enter the network name, Add catalog, tick Show in Menu, OK. Close Excel and start it again.',
          'Home, Add-ins, More Add-ins, Shared Folder: choose Channelwright.',
        ],
      },
      {
        heading: 'One person: Excel on Mac',
        steps: [
          'Copy manifest.xml to `~/Library/Containers/com.microsoft.Excel/Data/Documents/wef` (make the last folder if it is missing).',
          'Close Excel, start it again, choose Home, Add-ins, and pick Channelwright.',
        ],
      },
      {
        heading: 'A team: shared folder',
        before:
          'A catalogue that all colleagues on Windows can read. Microsoft means it for trying out, not for lasting use; Mac and web users follow their own steps above.',
        steps: [
          'One person puts manifest.xml on a network share that all may read and only few may write.',
          'Everybody adds the share under Trusted Add-in Catalogs as above, once. Administrators can set it by group policy.',
        ],
      },
      {
        heading: 'An organisation: central deployment',
        steps: [
          'Microsoft 365 admin center: Settings, Integrated apps, Upload custom apps, type Office Add-in. Give the file or the address of manifest.xml.',
          'Choose who gets it, accept the permission (read and write the open workbook) and deploy. It may take a day or longer until everybody sees it.',
        ],
      },
      {
        heading: 'Upgrade',
        steps: [
          'The host of this site adds the new files and keeps the folders of older versions. Pane and corrections come with the next start of Excel, without any manifest.',
          'For new or changed worksheet functions Excel needs the new manifest, whose Version is higher: the administrator uploads it under the same app; on a shared folder the file is replaced; on the web and on a Mac it is uploaded or copied again.',
          'Excel keeps functions for up to 24 hours. Until then a new function shows `#NAME?` and its name is not offered; old ones go on working. Close all Excel windows, start again, and calculate with Ctrl+Alt+F9.',
          'If an old state will not go on Windows: Trust Center, Trusted Add-in Catalogs, tick to clear all previously started web add-ins at the next start.',
        ],
      },
      {
        heading: 'Remove',
        before:
          'Freeze first: without the add-in our columns keep their last values only until they are calculated again, then they show #NAME?.',
        steps: [
          'Freeze: in the pane, Remedies and state, Values instead of formulas, Make them values. Or from a shell: `channelwright check PLAN.xlsx -o FROZEN.xlsx --values`.',
          'Remove the add-in. Web: Home, Add-ins, More settings, remove it or clear the browser’s data. Windows: Home, Add-ins, right-click, Remove; delete the file from the share and the share from the catalogues. Mac: delete the file from the folder wef. Organisation: Integrated apps, Channelwright, Remove.',
        ],
        points: [
          'What stays in a workbook: our columns with their marks and notes, the summary sheet, and a small settings part with the columns as read. Other cells were never touched.',
          'Delete our columns and the summary sheet by hand if they are not wanted; colours come from conditional formats, which go with them.',
          'Installed again, the formulas are live again after Ctrl+Alt+F9.',
        ],
      },
    ],
  },
  de: {
    title: 'Einrichten, aktualisieren, entfernen',
    lead: [
      'Excel braucht eine Datei, um das Add-In zu kennen: [manifest.xml](manifest.xml). Sie nennt die Seiten auf diesem Server; sonst wird nichts installiert. Speichern Sie sie (Rechtsklick, Link speichern unter).',
      'Nötig: Excel aus Microsoft 365 unter Windows oder auf dem Mac, oder Excel im Web. Ob einmalig gekauftes Excel 2021 Tabellenfunktionen von Add-Ins kann, sagen die Seiten von Microsoft verschieden; spätere können es, Excel auf dem iPad nicht. Die Schritte folgen der Dokumentation von Microsoft, Stand 2026; Menünamen ändern sich gelegentlich.',
    ],
    sections: [
      {
        heading: 'Eine Person: Excel im Web',
        steps: [
          'Arbeitsmappe öffnen, Start, Add-Ins, Weitere Einstellungen, Mein Add-In hochladen, manifest.xml wählen.',
          'Auf der Registerkarte Start die Schaltfläche „Kanäle planen“ wählen. Das Add-In bleibt in diesem Browser, bis dessen Daten gelöscht werden.',
        ],
      },
      {
        heading: 'Eine Person: Excel unter Windows',
        steps: [
          'manifest.xml in einen eigenen, freigegebenen Ordner legen (Eigenschaften, Freigabe), notfalls nur für sich selbst, und den Netzwerknamen notieren, etwa `\\\\rechner\\addins`.',
          'Excel: Datei, Optionen, Trust Center, Einstellungen für das Trust Center, Kataloge vertrauenswürdiger Add-Ins. Netzwerknamen eintragen, Katalog hinzufügen, „Im Menü anzeigen“ ankreuzen, OK. Excel schließen und neu starten.',
          'Start, Add-Ins, Weitere Add-Ins, Freigegebener Ordner: Channelwright wählen.',
        ],
      },
      {
        heading: 'Eine Person: Excel auf dem Mac',
        steps: [
          'manifest.xml nach `~/Library/Containers/com.microsoft.Excel/Data/Documents/wef` kopieren (den letzten Ordner anlegen, wenn er fehlt).',
          'Excel schließen, neu starten, Start, Add-Ins, Channelwright wählen.',
        ],
      },
      {
        heading: 'Eine Gruppe: freigegebener Ordner',
        before:
          'Ein Katalog, den alle Kollegen unter Windows lesen können. Microsoft sieht ihn zum Erproben vor, nicht für den dauernden Gebrauch; auf Mac und im Web gelten die Schritte oben.',
        steps: [
          'Eine Person legt manifest.xml auf eine Netzfreigabe, die alle lesen und nur wenige beschreiben dürfen.',
          'Jeder trägt die Freigabe einmal wie oben bei den Katalogen ein. Administratoren können das per Gruppenrichtlinie tun.',
        ],
      },
      {
        heading: 'Eine Organisation: zentrale Bereitstellung',
        steps: [
          'Microsoft 365 Admin Center: Einstellungen, Integrierte Apps, Benutzerdefinierte Apps hochladen, Typ Office-Add-In. Die Datei oder die Adresse von manifest.xml angeben.',
          'Wählen, wer es bekommt, die Berechtigung annehmen (die offene Arbeitsmappe lesen und schreiben) und bereitstellen. Bis es alle sehen, kann ein Tag oder mehr vergehen.',
        ],
      },
      {
        heading: 'Aktualisieren',
        steps: [
          'Der Betreiber dieses Servers legt die neuen Dateien dazu und behält die Ordner älterer Versionen. Aufgabenbereich und Korrekturen kommen mit dem nächsten Start von Excel, ohne Manifest.',
          'Für neue oder geänderte Tabellenfunktionen braucht Excel das neue Manifest mit höherer Version: Der Administrator lädt es bei derselben App hoch; auf der Freigabe wird die Datei ersetzt; im Web und auf dem Mac wird es erneut hochgeladen oder kopiert.',
          'Excel behält Funktionen bis zu 24 Stunden. Bis dahin zeigt eine neue Funktion `#NAME?` und wird nicht angeboten; alte laufen weiter. Alle Excel-Fenster schließen, neu starten und mit Strg+Alt+F9 berechnen.',
          'Wenn unter Windows ein alter Stand nicht weicht: Trust Center, Kataloge vertrauenswürdiger Add-Ins, ankreuzen, dass beim nächsten Start alle zuvor gestarteten Web-Add-Ins gelöscht werden.',
        ],
      },
      {
        heading: 'Entfernen',
        before:
          'Zuerst einfrieren: Ohne das Add-In behalten unsere Spalten ihre letzten Werte nur, bis neu gerechnet wird; dann zeigen sie #NAME?.',
        steps: [
          'Einfrieren: im Aufgabenbereich Abhilfe und Zustand, Werte statt Formeln, In Werte umwandeln. Oder in der Shell: `channelwright check PLAN.xlsx -o FEST.xlsx --values`.',
          'Add-In entfernen. Web: Start, Add-Ins, Weitere Einstellungen, entfernen oder die Daten des Browsers löschen. Windows: Start, Add-Ins, Rechtsklick, Entfernen; die Datei von der Freigabe und die Freigabe aus den Katalogen löschen. Mac: die Datei aus dem Ordner wef löschen. Organisation: Integrierte Apps, Channelwright, Entfernen.',
        ],
        points: [
          'Was in einer Arbeitsmappe bleibt: unsere Spalten mit Farben und Notizen, das Blatt mit der Zusammenfassung und ein kleiner Einstellungsteil mit den gelesenen Spalten. Andere Zellen wurden nie verändert.',
          'Unerwünschte Spalten und die Zusammenfassung löschen Sie von Hand; die Farben sind bedingte Formate und verschwinden mit ihnen.',
          'Wieder eingerichtet, leben die Formeln nach Strg+Alt+F9 wieder.',
        ],
      },
    ],
  },
  fr: {
    title: 'Installer, mettre à jour, retirer',
    lead: [
      'Excel n’a besoin que d’un fichier pour connaître le complément : [manifest.xml](manifest.xml). Il nomme les pages de ce site ; rien d’autre n’est installé. Enregistrez-le (clic droit, Enregistrer le lien sous).',
      'Il faut Excel de Microsoft 365 sous Windows ou sur Mac, ou Excel sur le web. Les pages de Microsoft divergent sur les fonctions de compléments dans Excel 2021 acheté une fois ; les versions suivantes les ont, Excel sur iPad non. Les étapes suivent la documentation de Microsoft de 2026 ; les noms des menus changent parfois.',
    ],
    sections: [
      {
        heading: 'Une personne : Excel sur le web',
        steps: [
          'Ouvrez un classeur, Accueil, Compléments, Plus de paramètres, Charger mon complément, et choisissez manifest.xml.',
          'Choisissez « Planifier les voies » sous l’onglet Accueil. Le complément reste dans ce navigateur tant que ses données ne sont pas effacées.',
        ],
      },
      {
        heading: 'Une personne : Excel sous Windows',
        steps: [
          'Placez manifest.xml dans un dossier à part et partagé (propriétés, Partage), au besoin avec vous seul, et notez son nom de réseau, par exemple `\\\\machine\\complements`.',
          'Excel : Fichier, Options, Centre de gestion de la confidentialité, Paramètres, Catalogues de compléments approuvés. Saisissez le nom de réseau, Ajouter le catalogue, cochez Afficher dans le menu, OK. Fermez Excel et relancez-le.',
          'Accueil, Compléments, Plus de compléments, Dossier partagé : choisissez Channelwright.',
        ],
      },
      {
        heading: 'Une personne : Excel sur Mac',
        steps: [
          'Copiez manifest.xml dans `~/Library/Containers/com.microsoft.Excel/Data/Documents/wef` (créez le dernier dossier s’il manque).',
          'Fermez Excel, relancez-le, Accueil, Compléments, choisissez Channelwright.',
        ],
      },
      {
        heading: 'Une équipe : dossier partagé',
        before:
          'Un catalogue que tous les collègues sous Windows peuvent lire. Microsoft le destine aux essais, pas à un usage durable ; sur Mac et sur le web, suivez les étapes ci-dessus.',
        steps: [
          'Une personne place manifest.xml sur un partage que tous peuvent lire et que peu peuvent écrire.',
          'Chacun ajoute ce partage aux catalogues comme ci-dessus, une fois. Les administrateurs peuvent le faire par stratégie de groupe.',
        ],
      },
      {
        heading: 'Une organisation : déploiement central',
        steps: [
          'Centre d’administration Microsoft 365 : Paramètres, Applications intégrées, Charger des applications personnalisées, type Complément Office. Donnez le fichier ou l’adresse de manifest.xml.',
          'Choisissez qui le reçoit, acceptez l’autorisation (lire et écrire le classeur ouvert) et déployez. Il peut se passer un jour ou plus avant que tous le voient.',
        ],
      },
      {
        heading: 'Mettre à jour',
        steps: [
          'L’hébergeur de ce site ajoute les nouveaux fichiers et garde les dossiers des versions précédentes. Le volet et les corrections arrivent au prochain démarrage d’Excel, sans manifeste.',
          'Pour des fonctions de feuille nouvelles ou modifiées, Excel a besoin du nouveau manifeste, de Version plus élevée : l’administrateur le charge sous la même application ; sur le partage, le fichier est remplacé ; sur le web et sur Mac, il est chargé ou copié de nouveau.',
          'Excel garde les fonctions jusqu’à 24 heures. D’ici là une fonction nouvelle affiche `#NOM?` et n’est pas proposée ; les anciennes continuent. Fermez toutes les fenêtres d’Excel, relancez-le et calculez avec Ctrl+Alt+F9.',
          'Si un ancien état persiste sous Windows : Centre de gestion de la confidentialité, Catalogues de compléments approuvés, cochez l’effacement au prochain démarrage des compléments web déjà lancés.',
        ],
      },
      {
        heading: 'Retirer',
        before:
          'Figez d’abord : sans le complément, nos colonnes ne gardent leurs dernières valeurs que jusqu’au prochain calcul, puis affichent #NOM?.',
        steps: [
          'Figer : dans le volet, Remèdes et état, Des valeurs au lieu de formules, Convertir en valeurs. Ou en ligne de commande : `channelwright check PLAN.xlsx -o FIGE.xlsx --values`.',
          'Retirez le complément. Web : Accueil, Compléments, Plus de paramètres, retirez-le ou effacez les données du navigateur. Windows : Accueil, Compléments, clic droit, Supprimer ; effacez le fichier du partage et le partage des catalogues. Mac : effacez le fichier du dossier wef. Organisation : Applications intégrées, Channelwright, Supprimer.',
        ],
        points: [
          'Ce qui reste dans un classeur : nos colonnes avec leurs couleurs et notes, la feuille de synthèse et une petite partie de réglages avec les colonnes lues. Les autres cellules n’ont jamais été modifiées.',
          'Supprimez à la main les colonnes et la synthèse dont vous ne voulez plus ; les couleurs sont des mises en forme conditionnelles et partent avec elles.',
          'Une fois réinstallé, les formules revivent après Ctrl+Alt+F9.',
        ],
      },
    ],
  },
};
