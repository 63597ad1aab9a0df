import type { Translations } from '../wording';

export const verdict: Translations = {
  'PASS, WARN, FAIL or INCOMPLETE for a number that must be large enough.':
    'PASS, WARN, FAIL oder INCOMPLETE für eine Zahl, die groß genug sein muss.',
  'The number to judge; a blank, text or error is INCOMPLETE.':
    'Die zu beurteilende Zahl; leer, Text oder Fehlerwert ergibt INCOMPLETE.',
  'Smallest number that passes.': 'Kleinste Zahl, die besteht.',
  'Smallest number that only warns; blank: there is no WARN.':
    'Kleinste Zahl, die nur eine Warnung ergibt; leer: Es gibt kein WARN.',
  'PASS, WARN, FAIL or INCOMPLETE.': 'PASS, WARN, FAIL oder INCOMPLETE.',
  'PASS, WARN, FAIL or INCOMPLETE for a number that must be small enough.':
    'PASS, WARN, FAIL oder INCOMPLETE für eine Zahl, die klein genug sein muss.',
  'Largest number that passes.': 'Größte Zahl, die besteht.',
  'Largest number that only warns; blank: there is no WARN.':
    'Größte Zahl, die nur eine Warnung ergibt; leer: Es gibt kein WARN.',
  'The worst of several verdicts.': 'Das schlechteste von mehreren Urteilen.',
  'Verdict cells or ranges; a blank, an error or any other word counts as INCOMPLETE.':
    'Zellen oder Bereiche mit Urteilen; leer, Fehlerwert oder jedes andere Wort zählt als INCOMPLETE.',
  'Verdict on a thermal deviation band and on the temperature limits of sensor, mount and cable.':
    'Urteil über das Abweichungsband mit der Temperatur und die Temperaturgrenzen von Aufnehmer, Ankopplung und Kabel.',
  'Lowest temperature needed.': 'Tiefste benötigte Temperatur.',
  'Lower operating limit of the sensor.': 'Untere Betriebsgrenze des Aufnehmers.',
  'Upper operating limit of the sensor.': 'Obere Betriebsgrenze des Aufnehmers.',
  'Lower limit of the mount; blank: not limited.': 'Untere Grenze der Ankopplung; leer: nicht begrenzt.',
  'Upper limit of the mount; blank: not limited.': 'Obere Grenze der Ankopplung; leer: nicht begrenzt.',
  'Lower limit of the cable; blank: not limited.': 'Untere Grenze des Kabels; leer: nicht begrenzt.',
  'Upper limit of the cable; blank: not limited.': 'Obere Grenze des Kabels; leer: nicht begrenzt.',
  'Verdict on a needed frequency band against the usable span and a wider one.':
    'Urteil über ein benötigtes Frequenzband gegen den nutzbaren Bereich und einen weiteren.',
  'Low end of the usable span in Hz; #NUM! means that the span is empty.':
    'Unteres Ende des nutzbaren Bereichs in Hz; #NUM! (deutsch #ZAHL!) bedeutet, dass kein Bereich bleibt.',
  'High end of the usable span in Hz.': 'Oberes Ende des nutzbaren Bereichs in Hz.',
  'Low end of the span at the wider tolerance, in Hz.': 'Unteres Ende des Bereichs bei der weiteren Toleranz, in Hz.',
  'High end of the span at the wider tolerance, in Hz.': 'Oberes Ende des Bereichs bei der weiteren Toleranz, in Hz.',
  'Whether the input can take what the sensor gives: PASS, FAIL, or INCOMPLETE when one is not known.':
    'Ob der Eingang annehmen kann, was der Aufnehmer abgibt: PASS, FAIL, oder INCOMPLETE, wenn eines davon unbekannt ist.',
  'Output mode of the sensor.': 'Art des Aufnehmerausgangs.',
  'Mode of the input.': 'Betriebsart des Eingangs.',
  'Why VERDICT.MODE fails, in words: which output stands on which input, and what would help.':
    'Warum VERDICT.MODE auf FAIL steht, in Worten: welcher Ausgang an welchem Eingang, und was helfen würde.',
  'Upper limit of the channel; 0 where the supply leaves no swing.':
    'Obere Grenze des Kanals; 0, wo die Speisung keinen Spielraum lässt.',
  'A sentence; a dash where the input takes it, or one of both is not known.':
    'Ein Satz; ein Strich, wo der Eingang passt oder eines von beiden unbekannt ist.',
  'Which temperature lies beyond which operating limit, in words: sensor, mount and cable.':
    'Welche Temperatur welche Einsatzgrenze überschreitet, in Worten: Aufnehmer, Ankopplung und Kabel.',
  'Sentences; a dash where no known limit is exceeded.':
    'Sätze; ein Strich, wo keine bekannte Grenze überschritten ist.',
  'PASS, FAIL or INCOMPLETE.': 'PASS, FAIL oder INCOMPLETE.',
  'Checks every row of a channel list against the lists it names: numbers, verdicts and reasons.':
    'Prüft jede Zeile einer Kanalliste gegen die Listen, die sie nennt: Zahlen, Urteile und Gründe.',
  'The channel list with its heading row.': 'Die Kanalliste mit ihrer Kopfzeile.',
  'The sensor list with its heading row.': 'Die Aufnehmerliste mit ihrer Kopfzeile.',
  'The mount list with its heading row.': 'Die Liste der Ankopplungen mit ihrer Kopfzeile.',
  'The cable list with its heading row.': 'Die Kabelliste mit ihrer Kopfzeile.',
  'The input list with its heading row.': 'Die Liste der Eingänge mit ihrer Kopfzeile.',
  'The limits with their heading row; blank: the defaults.': 'Die Grenzwerte mit ihrer Kopfzeile; leer: die Vorgaben.',
  'A heading row and one row for each row of the list; a blank row stays blank. What cannot be computed is blank and makes its verdict INCOMPLETE.':
    'Eine Kopfzeile und eine Zeile je Zeile der Liste; eine leere Zeile bleibt leer. Was nicht berechnet werden kann, ist leer und macht sein Urteil INCOMPLETE.',
  'One short text for a channel row: what keeps it from a PASS, worst first, and what would help.':
    'Ein kurzer Text für eine Kanalzeile: was sie von PASS trennt, das Schlimmste zuerst, und was helfen würde.',
  'Verdict of the level; its cause may follow.': 'Urteil über den Pegel; die Ursache darf folgen.',
  'Signal to noise.': 'Rauschabstand.',
  'Verdict of the mass loading; its cause may follow.': 'Urteil über die Massenbelastung; die Ursache darf folgen.',
  'Mass ratio.': 'Massenverhältnis.',
  'Heaviest sensor that passes.': 'Schwerster Aufnehmer, der besteht.',
  'Verdict of the thermal deviation; its cause may follow.':
    'Urteil über die Abweichung mit der Temperatur; die Ursache darf folgen.',
  'Lowest deviation.': 'Kleinste Abweichung.',
  'Highest deviation.': 'Größte Abweichung.',
  'Verdict of the frequency span; its cause may follow.': 'Urteil über den Frequenzbereich; die Ursache darf folgen.',
  'Lower end of the span.': 'Unteres Ende des Bereichs.',
  'Upper end of the span.': 'Oberes Ende des Bereichs.',
  'Limit of the signal to noise.': 'Grenze des Rauschabstands.',
  'Limit of the headroom.': 'Grenze der Aussteuerreserve.',
  'Limit of the mass ratio.': 'Grenze des Massenverhältnisses.',
  'Thermal tolerance.': 'Toleranz der Abweichung mit der Temperatur.',
  'Cells that name what is not known, as MISSING gives them; used for an INCOMPLETE row.':
    'Zellen, die nennen, was unbekannt ist, wie MISSING sie liefert; benutzt für eine Zeile mit INCOMPLETE.',
  'Sentences; a dash for a row that passes.': 'Sätze; ein Strich für eine Zeile, die besteht.',
  'Which of several cells are blank, errors, or texts such as “tbd”: their names, or nothing.':
    'Welche von mehreren Zellen leer, Fehlerwerte oder Texte wie „tbd“ sind: ihre Namen, oder nichts.',
  'Names of the cells, separated by semicolons.': 'Namen der Zellen, durch Semikolon getrennt.',
  'The cells, in the order of the names.': 'Die Zellen, in der Reihenfolge der Namen.',
  'Names joined by commas; empty when nothing is missing.': 'Namen, durch Komma verbunden; leer, wenn nichts fehlt.',
  'Verdict on the false output of a temperature ramp beside the lowest level.':
    'Urteil über das falsche Signal einer Temperaturänderung neben dem kleinsten Pegel.',
  'False output of the ramp, as by THERMAL.RAMP.': 'Falsches Signal der Temperaturänderung, wie aus THERMAL.RAMP.',
  'Lowest level that must be read.': 'Kleinster Pegel, der gemessen werden muss.',
};
