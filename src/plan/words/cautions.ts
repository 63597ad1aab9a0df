import type { InLanguages, Language } from '../../core/language';
import type { CautionKey } from '../cautions';

interface CautionText {
  readonly title: string;
  readonly text: string;
}
interface CautionTexts {
  readonly aid: string;
  readonly cautions: Readonly<Record<CautionKey, CautionText>>;
}

const english: CautionTexts = {
  aid: 'A planning aid: verify before the test. It is not a protective function and does not replace local rules or licensed practice.',
  cautions: {
    'control sensor loss': {
      title: 'Loss of a control sensor',
      text:
        'If a control sensor comes off, its cable opens or its range is wrong, the controller sees too little and drives harder: ' +
        'the article can break and parts can fly. Usual practice: two independent control channels, lanyards on sensor and cable, ' +
        'drive and abort limits, sensor-loss detection, a low-level run first. Follow the test house’s own rules.',
    },
    'hot and cold surfaces': {
      title: 'Hot and cold surfaces',
      text:
        'Surfaces above about 45 °C or below freezing can injure on touch, depending on material and time (ISO 13732-1 and -3, from memory). ' +
        'Let parts come back to room temperature, wear gloves, mind vapours of hot adhesive. Local rules decide.',
    },
    'falling and thrown parts': {
      title: 'Work at height, falling and thrown parts',
      text:
        'Sensors, magnets and test items can fall or be thrown. Tether them, keep people out of the zone, protect eyes; lock machines out ' +
        'before reaching in, and hold no probe by hand on rotating plant. Work at height, rigging and lock-out belong to trained people under local rules.',
    },
    electricity: {
      title: 'Electricity',
      text:
        'Power amplifiers of shakers carry voltages that kill, and charged ceramic or a long cable can hold hundreds of volts after heat or a drop: ' +
        'short it before connecting. Explosive areas need certified circuits (IEC 60079, from memory); ordinary sensor electronics are not. ' +
        'Leave mains and amplifier work to licensed people.',
    },
    chamber: {
      title: 'Climatic chamber',
      text:
        'Never enter a chamber at temperature; liquid nitrogen displaces oxygen; doors can trap people; the article has its own ramp limits. ' +
        'The chamber’s operating rules come first.',
    },
    adhesives: {
      title: 'Adhesives and solvents',
      text:
        'Adhesives bond skin and eyes, solvents burn and need ventilation. Read the data sheet of each, mind flash points near hot parts, ' +
        'and follow the workplace’s rules for chemicals.',
    },
    lasers: {
      title: 'Lasers',
      text:
        'Where no contact sensor fits, a laser is the usual way: check its class and eyewear (IEC 60825-1, from memory) and reflections from shiny panels, ' +
        'with the site’s laser protection officer where one is required.',
    },
    'lead ceramic': {
      title: 'Lead ceramic',
      text: 'Piezoelectric ceramic usually contains lead: do not machine, grind or burn it, and dispose of broken sensors by local rules.',
    },
  },
};

const german: CautionTexts = {
  aid: 'Eine Planungshilfe: vor dem Versuch nachprüfen. Sie ist keine Schutzfunktion und ersetzt weder örtliche Regeln noch befugte Fachleute.',
  cautions: {
    'control sensor loss': {
      title: 'Ausfall eines Regelaufnehmers',
      text:
        'Löst sich ein Regelaufnehmer, bricht sein Kabel oder stimmt sein Bereich nicht, sieht der Regler zu wenig und treibt stärker an: ' +
        'der Prüfling kann brechen, Teile können wegfliegen. Übliche Praxis: zwei unabhängige Regelkanäle, Sicherungsleinen an Aufnehmer und Kabel, ' +
        'Antriebs- und Abbruchgrenzen, Erkennung eines Aufnehmerverlusts, zuerst ein Lauf mit kleinem Pegel. Es gelten die Regeln des Prüfhauses.',
    },
    'hot and cold surfaces': {
      title: 'Heiße und kalte Oberflächen',
      text:
        'Oberflächen über etwa 45 °C oder unter dem Gefrierpunkt können bei Berührung verletzen, je nach Werkstoff und Dauer (ISO 13732-1 und -3, aus dem Gedächtnis). ' +
        'Teile auf Raumtemperatur kommen lassen, Handschuhe tragen, Dämpfe heißen Klebers beachten. Örtliche Regeln entscheiden.',
    },
    'falling and thrown parts': {
      title: 'Arbeiten in der Höhe, fallende und weggeschleuderte Teile',
      text:
        'Aufnehmer, Magnete und Prüflinge können fallen oder weggeschleudert werden. Sichern, die Zone freihalten, Augen schützen; Maschinen gegen Anlauf sperren, ' +
        'bevor jemand hineingreift, und keine Tastspitze von Hand an drehende Teile halten. Höhenarbeit, Anschlagen und Sperren gehören in geschulte Hände nach örtlichen Regeln.',
    },
    electricity: {
      title: 'Elektrizität',
      text:
        'Leistungsverstärker von Schwingerregern führen tödliche Spannungen, und geladene Keramik oder ein langes Kabel kann nach Wärme oder Sturz Hunderte Volt halten: ' +
        'vor dem Anschließen kurzschließen. Explosionsbereiche brauchen bescheinigte Stromkreise (IEC 60079, aus dem Gedächtnis); gewöhnliche Aufnehmerelektronik ist das nicht. ' +
        'Arbeiten an Netz und Verstärker den Elektrofachkräften überlassen.',
    },
    chamber: {
      title: 'Klimakammer',
      text:
        'Eine temperierte Kammer nie betreten; flüssiger Stickstoff verdrängt Sauerstoff; Türen können einschließen; der Prüfling hat eigene Rampengrenzen. ' +
        'Die Betriebsregeln der Kammer gehen vor.',
    },
    adhesives: {
      title: 'Kleber und Lösemittel',
      text:
        'Kleber verbinden Haut und Augen, Lösemittel brennen und brauchen Lüftung. Das Datenblatt jedes Stoffs lesen, Flammpunkte neben heißen Teilen beachten ' +
        'und den Regeln des Betriebs für Gefahrstoffe folgen.',
    },
    lasers: {
      title: 'Laser',
      text:
        'Wo kein Aufnehmer mit Berührung passt, ist ein Laser der übliche Weg: Klasse und Schutzbrille (IEC 60825-1, aus dem Gedächtnis) und Reflexe an blanken Flächen prüfen, ' +
        'mit dem Laserschutzbeauftragten, wo einer vorgeschrieben ist.',
    },
    'lead ceramic': {
      title: 'Bleikeramik',
      text: 'Piezokeramik enthält meist Blei: nicht bearbeiten, schleifen oder verbrennen, und zerbrochene Aufnehmer nach örtlichen Regeln entsorgen.',
    },
  },
};

const french: CautionTexts = {
  aid: 'Une aide à la planification : vérifier avant l’essai. Elle n’est pas une fonction de protection et ne remplace ni les règles locales ni les personnes habilitées.',
  cautions: {
    'control sensor loss': {
      title: 'Perte d’un capteur de pilotage',
      text:
        'Si un capteur de pilotage se détache, si son câble se coupe ou si son calibre est faux, le pilote voit trop peu et excite davantage : ' +
        'le spécimen peut casser et des pièces être projetées. Pratique usuelle : deux voies de pilotage indépendantes, brides de retenue du capteur et du câble, ' +
        'limites d’excitation et d’arrêt, détection de perte de capteur, d’abord un passage à faible niveau. Suivre les règles du laboratoire d’essais.',
    },
    'hot and cold surfaces': {
      title: 'Surfaces chaudes et froides',
      text:
        'Les surfaces au-dessus d’environ 45 °C ou au-dessous de zéro peuvent blesser au toucher, selon le matériau et la durée (ISO 13732-1 et -3, de mémoire). ' +
        'Laisser revenir à la température ambiante, porter des gants, se méfier des vapeurs de colle chaude. Les règles locales décident.',
    },
    'falling and thrown parts': {
      title: 'Travail en hauteur, chutes et projections',
      text:
        'Capteurs, aimants et spécimens peuvent tomber ou être projetés. Les retenir, dégager la zone, protéger les yeux ; consigner les machines ' +
        'avant d’y passer la main, et ne tenir aucune pointe à la main sur une pièce tournante. Hauteur, levage et consignation reviennent à des personnes formées selon les règles locales.',
    },
    electricity: {
      title: 'Électricité',
      text:
        'Les amplificateurs de puissance des excitateurs portent des tensions mortelles, et une céramique chargée ou un long câble peut garder des centaines de volts après chaleur ou chute : ' +
        'court-circuiter avant de brancher. Les zones explosives exigent des circuits certifiés (IEC 60079, de mémoire) ; l’électronique ordinaire des capteurs ne l’est pas. ' +
        'Laisser le réseau et l’amplificateur aux personnes habilitées.',
    },
    chamber: {
      title: 'Enceinte climatique',
      text:
        'Ne jamais entrer dans une enceinte en température ; l’azote liquide chasse l’oxygène ; les portes peuvent enfermer ; le spécimen a ses propres limites de rampe. ' +
        'Les règles d’exploitation de l’enceinte priment.',
    },
    adhesives: {
      title: 'Colles et solvants',
      text:
        'Les colles lient la peau et les yeux, les solvants brûlent et demandent une ventilation. Lire la fiche de chacun, se méfier du point d’éclair près des pièces chaudes ' +
        'et suivre les règles du site pour les produits chimiques.',
    },
    lasers: {
      title: 'Lasers',
      text:
        'Où aucun capteur à contact ne convient, un laser est le moyen usuel : vérifier sa classe et les lunettes (IEC 60825-1, de mémoire) et les reflets sur les panneaux brillants, ' +
        'avec la personne compétente en sécurité laser là où elle est exigée.',
    },
    'lead ceramic': {
      title: 'Céramique au plomb',
      text: 'La céramique piézoélectrique contient en général du plomb : ne pas l’usiner, la meuler ni la brûler, et éliminer les capteurs cassés selon les règles locales.',
    },
  },
};

const TEXTS: InLanguages<CautionTexts> = { en: english, de: german, fr: french };

/** Shown with every plan. */
export const planningAid = (language: Language): string => TEXTS[language].aid;

export const cautionText = (key: CautionKey, language: Language): CautionText => TEXTS[language].cautions[key];
