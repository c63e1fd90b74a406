<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
<context>
    <name>Amounts</name>
    <message>
        <source>About %1 g mixed, by what you weighed on 1 head: how far heads lie apart is not known from one. Weigh what is left.</source>
        <translation>Etwa %1 g gemischt, nach dem, was Sie an 1 Kopf gewogen haben: wie sehr Köpfe sich unterscheiden, sagt ein einziger nicht. Wiegen, was übrig bleibt.</translation>
    </message>
    <message>
        <source>About %1 g mixed, by what you weighed on %2 heads; the least and the most of them would be %3 and %4 g. Weigh what is left.</source>
        <translation>Etwa %1 g gemischt, nach dem, was Sie an %2 Köpfen gewogen haben; der kleinste und der größte Wert davon ergäben %3 und %4 g. Wiegen, was übrig bleibt.</translation>
    </message>
    <message>
        <source>About %1 g mixed, by the product for hair that is typed under Assumptions of this plan; how far off it may be is not known: weigh what is left.</source>
        <translation>Etwa %1 g gemischt, nach dem Produkt je Haar, das unter Annahmen dieses Plans eingetragen ist; wie weit es daneben liegt, ist nicht bekannt: wiegen, was übrig bleibt.</translation>
    </message>
    <message>
        <source>Thin weaves take more product for their hair than this estimates.</source>
        <translation>Feine gewebte Strähnen brauchen mehr Produkt für ihr Haar, als hier geschätzt ist.</translation>
    </message>
    <message>
        <source>Nothing of what this list looks for was found; that says nothing about this hair.</source>
        <translation>Nichts von dem, wonach diese Liste sucht, wurde gefunden; über dieses Haar sagt das nichts.</translation>
    </message>
    <message>
        <source>Each of these but a second pair of hands changes the look too: see it first.</source>
        <translation>Jede davon, außer einem zweiten Paar Hände, ändert auch den Look: vorher ansehen.</translation>
    </message>
    <message>
        <source>Minutes and grams are estimates: this head may take more or less of both.</source>
        <translation>Minuten und Gramm sind Schätzungen: dieser Kopf kann von beidem mehr oder weniger brauchen.</translation>
    </message>
    <message>
        <source>Wear gloves and keep the air moving.</source>
        <translation>Handschuhe tragen und gut lüften.</translation>
    </message>
    <message>
        <source>From %2 to %3 g mixed by the assumption&apos;s range; bowls here go by %1 g. None of your own heads is weighed yet: have more at hand, weigh what is left and take it over.</source>
        <translation>Von %2 bis %3 g gemischt nach der Spanne der Annahme; die Schalen hier gehen von %1 g aus. Sie haben noch an keinem Kopf gewogen: mehr bereithalten, wiegen, was übrig bleibt, und übernehmen.</translation>
    </message>
</context>
<context>
    <name>Appointment</name>
    <message>
        <source>%1 pieces</source>
        <translation>%1 Strähnen</translation>
    </message>
    <message>
        <source>piece %1</source>
        <translation>Strähne %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>no formula named</source>
        <translation>keine Rezeptur genannt</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: bowl %2</source>
        <translation>%1: Schale %2</translation>
    </message>
    <message>
        <source>%1: no formula is named, so nothing is known of its bowl. Choose one on the piece card.</source>
        <translation>%1: Es ist keine Rezeptur genannt, darum ist über die Schale nichts bekannt. Auf der Strähnenkarte eine wählen.</translation>
    </message>
    <message>
        <source>%1: resistant hair comes after hair that takes faster. Common practice places it first.</source>
        <translation>%1: Widerstandsfähiges Haar kommt nach Haar, das schneller annimmt. Übliche Praxis setzt es an den Anfang.</translation>
    </message>
    <message>
        <source>%1: fine hair at the hairline comes before slower hair. Common practice places it last.</source>
        <translation>%1: Feines Haar an der Haarlinie kommt vor langsamerem Haar. Übliche Praxis setzt es an den Schluss.</translation>
    </message>
    <message>
        <source>%1: %2 mm along the parting; your widest foil is %3 mm.</source>
        <translation>%1: %2 mm entlang der Abteillinie; Ihre breiteste Folie hat %3 mm.</translation>
    </message>
    <message>
        <source>%1, developer: %2. Look at the label again.</source>
        <translation>%1, Entwickler: %2. Das Etikett noch einmal ansehen.</translation>
    </message>
    <message>
        <source>%1, developer of %2 %: outside the EU limit; your maker or place may set less; below it is no sign that it suits this hair.</source>
        <translation>%1, Entwickler mit %2 %: außerhalb der EU-Grenze; Ihr Hersteller oder Ihr Ort kann weniger vorgeben; darunter zu liegen ist kein Zeichen, dass es für dieses Haar passt.</translation>
    </message>
    <message>
        <source>%1: a working life of %2 min. Type it from the leaflet, above 0.</source>
        <translation>%1: eine Verarbeitungszeit von %2 min. Aus der Gebrauchsanweisung eintragen, über 0.</translation>
    </message>
    <message>
        <source>%1: a longest time of %2 min. Type it from the leaflet, above 0.</source>
        <translation>%1: eine längste Einwirkzeit von %2 min. Aus der Gebrauchsanweisung eintragen, über 0.</translation>
    </message>
    <message>
        <source>%1: bowls show their total only. Type the parts from the leaflet to have grams of each.</source>
        <translation>%1: Schalen zeigen nur ihre Gesamtmenge. Die Teile aus der Gebrauchsanweisung eintragen, um die Gramm einzeln zu sehen.</translation>
    </message>
    <message>
        <source>%1: no bowl is planned anew. Type from the leaflet how long a bowl may be used.</source>
        <translation>%1: Keine Schale wird neu eingeplant. Aus der Gebrauchsanweisung eintragen, wie lange eine Schale verwendet werden darf.</translation>
    </message>
    <message>
        <source>%1: mixing and placing take %2 min, a bowl of %3 may be used for %4 min. No order avoids it: only a smaller piece or a quicker hand.</source>
        <translation>%1: Anmischen und Auftragen dauern %2 min, eine Schale von %3 darf %4 min verwendet werden. Keine Reihenfolge vermeidet das: nur eine kleinere Strähne oder eine schnellere Hand.</translation>
    </message>
    <message>
        <source>%1: on the hair for %2 min when the last piece is in; the maker&apos;s longest time for %3 is %4 min.</source>
        <translation>%1: %2 min auf dem Haar, wenn die letzte Strähne eingelegt ist; die längste Zeit des Herstellers für %3 ist %4 min.</translation>
    </message>
    <message>
        <source>%1 min: a second pair of hands</source>
        <translation>%1 min: ein zweites Paar Hände</translation>
    </message>
    <message>
        <source>mix %1</source>
        <translation>%1 anmischen</translation>
    </message>
    <message>
        <source>backcomb %1</source>
        <translation>%1 toupieren</translation>
    </message>
    <message>
        <source>look at the pieces that are in</source>
        <translation>die Strähnen ansehen, die schon eingelegt sind</translation>
    </message>
    <message>
        <source>after the rinse: open the backcombed pieces</source>
        <translation>nach dem Ausspülen: die toupierten Strähnen öffnen</translation>
    </message>
    <message>
        <source>%1 %2 g</source>
        <translation>%1 %2 g</translation>
    </message>
    <message>
        <source>unnamed</source>
        <translation>ohne Namen</translation>
    </message>
    <message>
        <source>placed</source>
        <translation>aufgetragen</translation>
    </message>
    <message>
        <source>bowl mixed</source>
        <translation>Schale angemischt</translation>
    </message>
    <message>
        <source>looked</source>
        <translation>angesehen</translation>
    </message>
    <message>
        <source>taken out</source>
        <translation>herausgenommen</translation>
    </message>
    <message>
        <source>rinsed</source>
        <translation>ausgespült</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, level %2</source>
        <translation>%1, Tonhöhe %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, taken back</source>
        <translation>%1, zurückgenommen</translation>
    </message>
    <message>
        <source>Tap %1: the clock of this computer was set back by %2 min. Times on the hair were not shortened; look at a clock.</source>
        <translation>Eintrag %1: Die Uhr dieses Rechners wurde um %2 min zurückgestellt. Zeiten auf dem Haar wurden nicht verkürzt; auf eine Uhr sehen.</translation>
    </message>
    <message>
        <source>Tap %1: the clock of this computer was changed by %2 min. Times on the hair are still counted right.</source>
        <translation>Eintrag %1: Die Uhr dieses Rechners wurde um %2 min verstellt. Die Zeiten auf dem Haar werden trotzdem richtig gezählt.</translation>
    </message>
    <message>
        <source>Tap %1 has a time before the tap above it: the file was changed by hand.</source>
        <translation>Eintrag %1 hat eine Zeit vor dem Eintrag darüber: Die Datei wurde von Hand geändert.</translation>
    </message>
    <message>
        <source>Tap %1: %2 was taken out or rinsed, and no tap says when it was placed.</source>
        <translation>Eintrag %1: %2 wurde herausgenommen oder ausgespült, und kein Eintrag sagt, wann aufgetragen wurde.</translation>
    </message>
    <message>
        <source>Tap %1: %2 was placed already; its time runs from the first tap.</source>
        <translation>Eintrag %1: %2 war schon aufgetragen; die Zeit läuft ab dem ersten Eintrag.</translation>
    </message>
    <message>
        <source>Tap %1 names %2, which the plan does not hold any more.</source>
        <translation>Eintrag %1 nennt %2; das steht nicht mehr im Plan.</translation>
    </message>
    <message>
        <source>seen at its planned level: wipe a strand clean and look now</source>
        <translation>in geplanter Tonhöhe gesehen: eine Strähne abwischen und jetzt ansehen</translation>
    </message>
    <message>
        <source>fine hair at the hairline: look</source>
        <translation>feines Haar an der Haarlinie: ansehen</translation>
    </message>
    <message>
        <source>look</source>
        <translation>ansehen</translation>
    </message>
    <message>
        <source>1 head</source>
        <translation>1 Kopf</translation>
    </message>
    <message>
        <source>%1 heads</source>
        <translation>%1 Köpfe</translation>
    </message>
    <message>
        <source>Placing took %1 times the minutes of the assumptions (%2).</source>
        <translation>Das Auftragen dauerte das %1-Fache der Minuten der Annahmen (%2).</translation>
    </message>
    <message>
        <source>Product: %1 g for 1 g of hair under it (%2).</source>
        <translation>Produkt: %1 g für 1 g Haar darunter (%2).</translation>
    </message>
    <message>
        <source>Left in the bowl: %1 of what was used (%2).</source>
        <translation>In der Schale übrig: %1 von dem, was verbraucht wurde (%2).</translation>
    </message>
    <message>
        <source>Pain, burning, swelling: rinse the product off at once with plenty of lukewarm water, unless the maker&apos;s first aid says otherwise, and get medical help. In the eye: rinse with water at once, then medical help. Trouble breathing or a swelling face: the emergency number.</source>
        <translation>Schmerz, Brennen, Schwellung: das Produkt sofort mit viel lauwarmem Wasser ausspülen, wenn die Erste-Hilfe-Hinweise des Herstellers nichts anderes sagen, und ärztliche Hilfe holen. Im Auge: sofort mit Wasser ausspülen, dann ärztliche Hilfe. Atemnot oder Schwellung im Gesicht: den Notruf wählen.</translation>
    </message>
    <message>
        <source>The maker&apos;s directions come first, then local rules, your licence and your insurer. Added heat only as the leaflet says.</source>
        <translation>Die Angaben des Herstellers gehen vor, dann örtliche Vorschriften, Ihre Berufsberechtigung und Ihre Versicherung. Zusätzliche Wärme nur, wie es die Gebrauchsanweisung sagt.</translation>
    </message>
    <message>
        <source>taken out, not rinsed: product may still be on it</source>
        <translation>herausgenommen, nicht ausgespült: es kann noch Produkt daran sein</translation>
    </message>
    <message>
        <source>%1: on the hair for %2 min before the list looks for the first time. Neither the maker&apos;s longest time nor rounds of looking (Look every) are typed.</source>
        <translation>%1: %2 min auf dem Haar, bevor die Liste das erste Ansehen vorsieht. Weder die längste Zeit des Herstellers noch Runden zum Ansehen (Ansehen alle) sind eingetragen.</translation>
    </message>
    <message>
        <source>place %1, from %2 up to the handover, then from %3; product %4 and %5 min old</source>
        <translation>%1 auftragen, aus %2 bis zur Grenze, dann aus %3; Produkt %4 und %5 min alt</translation>
    </message>
    <message>
        <source>place %1, from %2; product %3 min old</source>
        <translation>%1 auftragen, aus %2; Produkt %3 min alt</translation>
    </message>
    <message>
        <source>place %1 up to the handover, from %2; product %3 min old</source>
        <translation>%1 bis zur Grenze auftragen, aus %2; Produkt %3 min alt</translation>
    </message>
    <message>
        <source>place %1 beyond the handover, from %2; product %3 min old</source>
        <translation>%1 jenseits der Grenze auftragen, aus %2; Produkt %3 min alt</translation>
    </message>
    <message>
        <source>%1, bowl %2: about %3 g. You mix %4 g at least, so more is left over.</source>
        <translation>%1, Schale %2: etwa %3 g. Sie mischen mindestens %4 g, also bleibt mehr übrig.</translation>
    </message>
    <message>
        <source>%1, bowls %2: the smallest about %3 g. You mix %4 g at least, so more is left over.</source>
        <translation>%1, Schalen %2: die kleinste etwa %3 g. Sie mischen mindestens %4 g, also bleibt mehr übrig.</translation>
    </message>
    <message>
        <source>%1: mixing and placing take up to %2 min, a bowl of %3 may be used for %4 min. No order avoids it: only smaller pieces or a quicker hand.</source>
        <translation>%1: Mischen und Auftragen dauern bis zu %2 min, eine Schale von %3 darf %4 min benutzt werden. Keine Reihenfolge vermeidet das: nur kleinere Strähnen oder eine schnellere Hand.</translation>
    </message>
    <message>
        <source>%1 min: %2, without backcombing</source>
        <translation>%1 min: %2, ohne Toupieren</translation>
    </message>
    <message>
        <source>%1 min: %2, sliced, not woven</source>
        <translation>%1 min: %2, als Slices statt gewebt</translation>
    </message>
    <message>
        <source>%1 min: %2, left out</source>
        <translation>%1 min: %2, ausgelassen</translation>
    </message>
    <message>
        <source>about %1 g in all</source>
        <translation>etwa %1 g insgesamt</translation>
    </message>
    <message>
        <source>about %1 g: %2</source>
        <translation>etwa %1 g: %2</translation>
    </message>
    <message>
        <source>a new log begun</source>
        <translation>neues Protokoll begonnen</translation>
    </message>
    <message>
        <source>The comb pushed back %1 % of the taken hair (%2).</source>
        <translation>Der Kamm schob %1 % des genommenen Haars zurück (%2).</translation>
    </message>
    <message>
        <source>Tap %1: %2 was placed, and no bowl of its formula was tapped. Look which bowl it came from.</source>
        <translation>Eintrag %1: %2 wurde aufgetragen, und keine Schale ihrer Rezeptur ist eingetragen. Ansehen, aus welcher Schale es kam.</translation>
    </message>
    <message>
        <source>Toner, deepening colour and root shadow are colour: before each, ask about past reactions, look at the scalp just rinsed, and check which tests its label asks for and the lowest age. The maker&apos;s directions and local rules come first. Sore or broken skin, or in doubt: do not put it on; refer to a doctor.</source>
        <translation>Toner, abdunkelnde Farbe und Ansatzschatten sind Farbe: vor jeder nach früheren Reaktionen fragen, die eben gespülte Kopfhaut ansehen und prüfen, welche Tests das Etikett verlangt und ab welchem Alter. Anweisungen des Herstellers und örtliche Vorschriften gehen vor. Wunde oder verletzte Haut, oder im Zweifel: nicht auftragen; ärztlich abklären lassen.</translation>
    </message>
    <message>
        <source>longest time typed from the leaflet reached: product off now, as the leaflet says</source>
        <translation>längste eingetragene Zeit aus der Gebrauchsanweisung erreicht: Produkt jetzt abnehmen, wie die Gebrauchsanweisung es sagt</translation>
    </message>
    <message>
        <source>longest time typed from the leaflet reached: not rinsed yet</source>
        <translation>längste eingetragene Zeit aus der Gebrauchsanweisung erreicht: noch nicht ausgespült</translation>
    </message>
    <message>
        <source>look; the typed limit, not a target, is in %1</source>
        <translation>ansehen; die eingetragene Grenze, kein Ziel, ist in %1 erreicht</translation>
    </message>
    <message>
        <source>Tap %1: the computer was started anew or the plan went to another one, and the clock stands %2 min before the last tap. Times on the hair may be too short by that and more; look at a clock and at the hair.</source>
        <translation>Eintrag %1: Der Rechner wurde neu gestartet oder der Plan kam auf einen anderen Rechner, und die Uhr steht %2 min vor dem letzten Eintrag. Zeiten auf dem Haar können um so viel und mehr zu kurz sein; auf eine Uhr und auf das Haar sehen.</translation>
    </message>
    <message>
        <source>1 piece was not tapped as rinsed; it went on %1. If this appointment still goes on, look at the hair now.</source>
        <translation>1 Strähne ist nicht als ausgespült eingetragen; aufgetragen wurde %1. Wenn dieser Termin noch läuft, jetzt das Haar ansehen.</translation>
    </message>
    <message>
        <source>%1 pieces were not tapped as rinsed; the first went on %2. If this appointment still goes on, look at the hair now.</source>
        <translation>%1 Strähnen sind nicht als ausgespült eingetragen; die erste wurde %2 aufgetragen. Wenn dieser Termin noch läuft, jetzt das Haar ansehen.</translation>
    </message>
    <message>
        <source>Open, wipe, look: product on the hair makes it look lighter than it is.</source>
        <translation>Öffnen, abwischen, ansehen: Mit Produkt sieht Haar heller aus, als es ist.</translation>
    </message>
</context>
<context>
    <name>Assumption</name>
    <message>
        <source>Part off its planned place</source>
        <translation>Scheitel neben seinem geplanten Platz</translation>
    </message>
    <message>
        <source>Reach of the part</source>
        <translation>Reichweite des Scheitels</translation>
    </message>
    <message>
        <source>Pull of the part</source>
        <translation>Zug des Scheitels</translation>
    </message>
    <message>
        <source>Reach of the swirl</source>
        <translation>Reichweite des Wirbels</translation>
    </message>
    <message>
        <source>Pull of the swirl</source>
        <translation>Zug des Wirbels</translation>
    </message>
    <message>
        <source>Combed back at front and top</source>
        <translation>Vorn und oben zurückgekämmt</translation>
    </message>
    <message>
        <source>Kept out of the face</source>
        <translation>Aus dem Gesicht gehalten</translation>
    </message>
    <message>
        <source>Frizz</source>
        <translation>Krause</translation>
    </message>
    <message>
        <source>Leaning in toward the neck</source>
        <translation>Neigung zum Hals hin</translation>
    </message>
    <message>
        <source>Fullness near the root</source>
        <translation>Fülle nahe am Ansatz</translation>
    </message>
    <message>
        <source>Fullness of the hair as a whole</source>
        <translation>Fülle des Haars im Ganzen</translation>
    </message>
    <message>
        <source>Mixing of neighbouring layers</source>
        <translation>Mischung benachbarter Lagen</translation>
    </message>
    <message>
        <source>Size of waves and curls</source>
        <translation>Größe von Wellen und Locken</translation>
    </message>
    <message>
        <source>Radius of the tied tail</source>
        <translation>Radius des gebundenen Zopfs</translation>
    </message>
    <message>
        <source>Strength of the wind at the swirl</source>
        <translation>Stärke des Winds am Wirbel</translation>
    </message>
    <message>
        <source>How wide the hand opens the crown</source>
        <translation>Wie weit die Hand den Wirbel öffnet</translation>
    </message>
    <message>
        <source>Unevenness of the start</source>
        <translation>Ungleichmäßigkeit des Beginns</translation>
    </message>
    <message>
        <source>Unevenness of a backcombed start</source>
        <translation>Ungleichmäßigkeit eines toupierten Beginns</translation>
    </message>
    <message>
        <source>Growth in a week</source>
        <translation>Wachstum in einer Woche</translation>
    </message>
    <message>
        <source>All natural levels lighter or darker</source>
        <translation>Alle natürlichen Tonhöhen heller oder dunkler</translation>
    </message>
    <message>
        <source>All lightened hair lighter or darker</source>
        <translation>Alles aufgehellte Haar heller oder dunkler</translation>
    </message>
    <message>
        <source>Where in its span the hair lightens</source>
        <translation>Wo in seiner Spanne das Haar aufhellt</translation>
    </message>
    <message>
        <source>Light patch is a block from</source>
        <translation>Helle Fläche gilt als Block ab</translation>
    </message>
    <message>
        <source>Dark patch is a block from</source>
        <translation>Dunkle Fläche gilt als Block ab</translation>
    </message>
    <message>
        <source>Unbroken run along the opening from</source>
        <translation>Ununterbrochen entlang der Öffnung ab</translation>
    </message>
    <message>
        <source>Patch stands out from, of the planned difference</source>
        <translation>Fläche hebt sich ab, vom geplanten Unterschied</translation>
    </message>
    <message>
        <source>Patch stands out from, at least</source>
        <translation>Fläche hebt sich ab, mindestens</translation>
    </message>
    <message>
        <source>Patch is at the opening up to</source>
        <translation>Fläche liegt an der Öffnung bis</translation>
    </message>
    <message>
        <source>Patch is at least as wide as</source>
        <translation>Fläche ist mindestens so breit wie</translation>
    </message>
    <message>
        <source>Places needed to judge contrast</source>
        <translation>Nötige Stellen, um Kontrast zu beurteilen</translation>
    </message>
    <message>
        <source>Clear levels apart, of the planned difference</source>
        <translation>Klare Stufen auseinander, vom geplanten Unterschied</translation>
    </message>
    <message>
        <source>Clear levels apart, at least</source>
        <translation>Klare Stufen auseinander, mindestens</translation>
    </message>
    <message>
        <source>Soft levels apart, of the planned difference</source>
        <translation>Weiche Stufen auseinander, vom geplanten Unterschied</translation>
    </message>
    <message>
        <source>Soft levels apart, at least</source>
        <translation>Weiche Stufen auseinander, mindestens</translation>
    </message>
    <message>
        <source>One tone below this spread, of the planned difference</source>
        <translation>Ein Ton unter dieser Streuung, vom geplanten Unterschied</translation>
    </message>
    <message>
        <source>One tone below this spread, at least</source>
        <translation>Ein Ton unter dieser Streuung, mindestens</translation>
    </message>
    <message>
        <source>Clear levels apart, in times their own width</source>
        <translation>Klare Stufen auseinander, in eigenen Breiten</translation>
    </message>
    <message>
        <source>Most hair between two clear levels</source>
        <translation>Höchstens so viel Haar zwischen zwei klaren Stufen</translation>
    </message>
    <message>
        <source>Least share of the smaller level</source>
        <translation>Kleinster Anteil der kleineren Stufe</translation>
    </message>
    <message>
        <source>Stripes are seen from this contrast</source>
        <translation>Streifen sind zu sehen ab diesem Kontrast</translation>
    </message>
    <message>
        <source>Regrowth is looked for up to</source>
        <translation>Nachwuchs wird gesucht bis</translation>
    </message>
    <message>
        <source>Regrowth shows from a difference of</source>
        <translation>Nachwuchs zeigt sich ab einem Unterschied von</translation>
    </message>
    <message>
        <source>Too much one tone from</source>
        <translation>Zu viel ein Ton ab</translation>
    </message>
    <message>
        <source>Underneath looks bare below</source>
        <translation>Untere Lagen wirken ohne Helles unter</translation>
    </message>
    <message>
        <source>Hard edge from a step of</source>
        <translation>Harte Kante ab einer Stufe von</translation>
    </message>
    <message>
        <source>Face frame lighter by at least</source>
        <translation>Gesichtsrahmen heller um mindestens</translation>
    </message>
    <message>
        <source>Least share left dark</source>
        <translation>Kleinster dunkel gelassener Anteil</translation>
    </message>
    <message>
        <source>Target missed from</source>
        <translation>Ziel verfehlt ab</translation>
    </message>
    <message>
        <source>Early regrowth before</source>
        <translation>Früher Nachwuchs vor</translation>
    </message>
    <message>
        <source>Stripes too strong from</source>
        <translation>Streifen zu stark ab</translation>
    </message>
    <message>
        <source>Slow pieces come too late from</source>
        <translation>Langsame Strähnen kommen zu spät ab</translation>
    </message>
    <message>
        <source>Placing a slice</source>
        <translation>Einen Slice legen</translation>
    </message>
    <message>
        <source>Placing a woven piece</source>
        <translation>Eine gewebte Strähne legen</translation>
    </message>
    <message>
        <source>Painting a piece</source>
        <translation>Eine Strähne malen</translation>
    </message>
    <message>
        <source>Backcombing a piece</source>
        <translation>Eine Strähne toupieren</translation>
    </message>
    <message>
        <source>How hair falls</source>
        <translation>Wie das Haar fällt</translation>
    </message>
    <message>
        <source>Where light starts</source>
        <translation>Wo das Helle beginnt</translation>
    </message>
    <message>
        <source>Colour and growth</source>
        <translation>Farbe und Wachstum</translation>
    </message>
    <message>
        <source>Where a line is drawn</source>
        <translation>Wo eine Grenze gezogen wird</translation>
    </message>
    <message>
        <source>How long the work takes</source>
        <translation>Wie lange die Arbeit dauert</translation>
    </message>
    <message>
        <source>published</source>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>published %1</source>
        <translation>veröffentlicht %1</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>own assumption</source>
        <translation>eigene Annahme</translation>
    </message>
    <message>
        <source>typed</source>
        <translation>eingetragen</translation>
    </message>
    <message>
        <source>%1 %2 (default %3)</source>
        <translation>%1 %2 (Vorgabe %3)</translation>
    </message>
    <message>
        <source>Assumptions changed: %1</source>
        <translation>Geänderte Annahmen: %1</translation>
    </message>
    <message>
        <source>Opening a backcombed piece after the rinse</source>
        <translation>Öffnen einer toupierten Strähne nach dem Ausspülen</translation>
    </message>
    <message>
        <source>Mixing a bowl</source>
        <translation>Anmischen einer Schale</translation>
    </message>
    <message>
        <source>Looking at one piece</source>
        <translation>Ansehen einer Strähne</translation>
    </message>
    <message>
        <source>Time kept in reserve</source>
        <translation>Zeit als Reserve</translation>
    </message>
    <message>
        <source>Fine hair at the front hairline reaches</source>
        <translation>Feines Haar an der vorderen Haarlinie reicht</translation>
    </message>
    <message>
        <source>Mixed product for each gram of hair</source>
        <translation>Angemischtes Produkt je Gramm Haar</translation>
    </message>
    <message>
        <source>Left in the bowl and on the brush</source>
        <translation>Rest in Schale und Pinsel</translation>
    </message>
    <message>
        <source>Density of hair</source>
        <translation>Dichte von Haar</translation>
    </message>
    <message>
        <source>How much is mixed</source>
        <translation>Wie viel angemischt wird</translation>
    </message>
</context>
<context>
    <name>Chair</name>
    <message>
        <source>about %1</source>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>at the front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>on top</source>
        <translation>am Oberkopf</translation>
    </message>
    <message>
        <source>at the crown</source>
        <translation>an der Wirbelpartie</translation>
    </message>
    <message>
        <source>round the face</source>
        <translation>um das Gesicht</translation>
    </message>
    <message>
        <source>at the sides</source>
        <translation>an den Seiten</translation>
    </message>
    <message>
        <source>at the nape</source>
        <translation>im Nacken</translation>
    </message>
    <message>
        <source>at the upper back</source>
        <translation>am oberen Hinterkopf</translation>
    </message>
    <message>
        <source>at the middle of the back</source>
        <translation>in der Mitte hinten</translation>
    </message>
    <message>
        <source>at the ends</source>
        <translation>an den Spitzen</translation>
    </message>
    <message>
        <source>A picture of the plan, not a promise; a test strand shows how far your hair lightens.</source>
        <translation>Ein Bild des Plans, kein Versprechen; eine Probesträhne zeigt, wie weit Ihr Haar aufhellt.</translation>
    </message>
    <message>
        <source>black</source>
        <translation>schwarz</translation>
    </message>
    <message>
        <source>very dark brown</source>
        <translation>sehr dunkelbraun</translation>
    </message>
    <message>
        <source>dark brown</source>
        <translation>dunkelbraun</translation>
    </message>
    <message>
        <source>brown</source>
        <translation>braun</translation>
    </message>
    <message>
        <source>light brown</source>
        <translation>hellbraun</translation>
    </message>
    <message>
        <source>dark blond</source>
        <translation>dunkelblond</translation>
    </message>
    <message>
        <source>blond</source>
        <translation>blond</translation>
    </message>
    <message>
        <source>light blond</source>
        <translation>hellblond</translation>
    </message>
    <message>
        <source>very light blond</source>
        <translation>sehr hellblond</translation>
    </message>
    <message>
        <source>lightest blond</source>
        <translation>hellstblond</translation>
    </message>
    <message>
        <source>Being worked out.</source>
        <translation>Wird berechnet.</translation>
    </message>
    <message>
        <source>Looks like %1 as a whole; today it is %2 (%3). 1 is black, 10 lightest blond.</source>
        <translation>Wirkt insgesamt wie %1; heute ist es %2 (%3). 1 ist schwarz, 10 hellstblond.</translation>
    </message>
    <message>
        <source>Looks like %1 as a whole. 1 is black, 10 lightest blond.</source>
        <translation>Wirkt insgesamt wie %1. 1 ist schwarz, 10 hellstblond.</translation>
    </message>
    <message>
        <source>How much difference</source>
        <translation>Wie viel Unterschied</translation>
    </message>
    <message>
        <source>not seen</source>
        <translation>nicht zu sehen</translation>
    </message>
    <message>
        <source>Too little hair is seen this way to compare light and dark.</source>
        <translation>Zu wenig Haar ist so zu sehen, um Hell und Dunkel zu vergleichen.</translation>
    </message>
    <message>
        <source>almost none</source>
        <translation>fast keiner</translation>
    </message>
    <message>
        <source>Light and dark strands run together and look like one colour.</source>
        <translation>Helle und dunkle Strähnen laufen ineinander und wirken wie eine Farbe.</translation>
    </message>
    <message>
        <source>%1 steps</source>
        <translation>%1 Stufen</translation>
    </message>
    <message>
        <source>Weeks until the regrowth shows</source>
        <translation>Wochen, bis sich der Nachwuchs zeigt</translation>
    </message>
    <message>
        <source>Being worked out; it takes a little longer.</source>
        <translation>Wird berechnet; das dauert ein wenig länger.</translation>
    </message>
    <message>
        <source>about %1 weeks</source>
        <translation>etwa %1 Wochen</translation>
    </message>
    <message>
        <source>%1 to %2 weeks</source>
        <translation>%1 bis %2 Wochen</translation>
    </message>
    <message>
        <source>%1 to more than %2 weeks</source>
        <translation>%1 bis mehr als %2 Wochen</translation>
    </message>
    <message>
        <source>Until new growth begins to show at the parting as drawn, with the hair worn down; yours may show it sooner or later.</source>
        <translation>Bis der Nachwuchs am Scheitel wie gezeichnet zu sehen ist, mit offenem Haar; bei Ihnen kann es früher oder später sein.</translation>
    </message>
    <message>
        <source>How light, if it lightens less or more</source>
        <translation>Wie hell, wenn es weniger oder mehr aufhellt</translation>
    </message>
    <message>
        <source>between %1 and %2</source>
        <translation>zwischen %1 und %2</translation>
    </message>
    <message>
        <source>about 1 week</source>
        <translation>etwa 1 Woche</translation>
    </message>
    <message>
        <source>About %1 % of the hair that is seen is not lightened, spread through the light.</source>
        <translation>Etwa %1 % des sichtbaren Haars werden nicht aufgehellt, verteilt zwischen dem Hellen.</translation>
    </message>
    <message>
        <source>About %1 % of the hair that is seen is not lightened; the least light lies %2.</source>
        <translation>Etwa %1 % des sichtbaren Haars werden nicht aufgehellt; am wenigsten Helles liegt %2.</translation>
    </message>
    <message>
        <source>About %1 % of the hair that is seen is not lightened; the least light lies %2 and %3.</source>
        <translation>Etwa %1 % des sichtbaren Haars werden nicht aufgehellt; am wenigsten Helles liegt %2 und %3.</translation>
    </message>
    <message>
        <source>A picture of the plan, not a promise; a test strand shows how far this hair lightens.</source>
        <translation>Ein Bild des Plans, kein Versprechen; eine Probesträhne zeigt, wie weit dieses Haar aufhellt.</translation>
    </message>
    <message>
        <source>no week is given</source>
        <translation>keine Woche genannt</translation>
    </message>
    <message>
        <source>This is not a sign that new growth will not show; ask at the next visit.</source>
        <translation>Das heißt nicht, dass der Nachwuchs nicht zu sehen sein wird; fragen Sie beim nächsten Besuch.</translation>
    </message>
    <message>
        <source>almost none to %1 steps</source>
        <translation>fast keiner bis %1 Stufen</translation>
    </message>
    <message>
        <source>As planned, light and dark stand clearly apart.</source>
        <translation>Wie geplant heben sich Hell und Dunkel klar voneinander ab.</translation>
    </message>
    <message>
        <source>As planned, light and dark run softly into each other.</source>
        <translation>Wie geplant laufen Hell und Dunkel weich ineinander.</translation>
    </message>
    <message>
        <source>As planned, light and dark run together and look like one colour; if it lightens less or more, they may stand apart.</source>
        <translation>Wie geplant laufen Hell und Dunkel zusammen und sehen aus wie eine Farbe; hellt es weniger oder mehr auf, heben sie sich vielleicht ab.</translation>
    </message>
    <message>
        <source>If it lightens less or more, they may run together and look like one colour.</source>
        <translation>Hellt es weniger oder mehr auf, laufen sie vielleicht zusammen und sehen aus wie eine Farbe.</translation>
    </message>
    <message>
        <source>A step is one number of that scale.</source>
        <translation>Eine Stufe ist eine Zahl dieser Skala.</translation>
    </message>
</context>
<context>
    <name>CheckWords</name>
    <message>
        <source>plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>head</source>
        <translation>Kopf</translation>
    </message>
    <message>
        <source>hair</source>
        <translation>Haar</translation>
    </message>
    <message>
        <source>glaze</source>
        <translation>Glanztönung</translation>
    </message>
    <message>
        <source>root shadow</source>
        <translation>Ansatzschatten</translation>
    </message>
    <message>
        <source>section %1</source>
        <translation>Abteilung %1</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>Worked out with level 9 (8 to 10), which stands in every new plan; whether this hair gets there, a test strand shows.</source>
        <translation>Gerechnet mit Tonhöhe 9 (8 bis 10), die in jedem neuen Plan steht; ob dieses Haar dorthin kommt, zeigt eine Probesträhne.</translation>
    </message>
    <message>
        <source>a note</source>
        <translation>eine Notiz</translation>
    </message>
</context>
<context>
    <name>Engine</name>
    <message>
        <source>A light block of about %1 shows %2</source>
        <translation>Ein heller Block von etwa %1 zeigt sich %2</translation>
    </message>
    <message>
        <source>A dark block of about %1 shows %2</source>
        <translation>Ein dunkler Block von etwa %1 zeigt sich %2</translation>
    </message>
    <message>
        <source>An unbroken light line of %1 shows along the opening %2</source>
        <translation>Eine ununterbrochene helle Linie von %1 zeigt sich entlang der Öffnung, %2</translation>
    </message>
    <message>
        <source>An unbroken dark line of %1 shows along the opening %2</source>
        <translation>Eine ununterbrochene dunkle Linie von %1 zeigt sich entlang der Öffnung, %2</translation>
    </message>
    <message>
        <source>%1 of the hair looks like one middle tone, neither light nor dark</source>
        <translation>%1 des Haars wirken wie ein mittlerer Ton, weder hell noch dunkel</translation>
    </message>
    <message>
        <source>Stripes show at %1, %2 mm wide, from %3 m away</source>
        <translation>Streifen zeigen sich: %1, %2 mm breit, aus %3 m Entfernung</translation>
    </message>
    <message>
        <source>The hair underneath stays dark at %1 %2: %3 of it is light</source>
        <translation>Das Haar darunter bleibt dunkel (%1), %2: %3 davon sind hell</translation>
    </message>
    <message>
        <source>A hard edge shows %1: %2 differs by %3 from the hair beside it</source>
        <translation>Eine harte Kante zeigt sich %1: %2 weicht um %3 vom Haar daneben ab</translation>
    </message>
    <message>
        <source>The face frame hardly stands out: %1 is only %2 steps (L*) lighter than the whole look</source>
        <translation>Der Gesichtsrahmen hebt sich kaum ab: %1 ist nur %2 Stufen (L*) heller als der ganze Look</translation>
    </message>
    <message>
        <source>The face frame hardly stands out: %1 is %2 steps (L*) darker than the whole look</source>
        <translation>Der Gesichtsrahmen hebt sich kaum ab: %1 ist %2 Stufen (L*) dunkler als der ganze Look</translation>
    </message>
    <message>
        <source>The nape stays dark %1: %2 of it is light</source>
        <translation>Der Nacken bleibt dunkel, %1: %2 davon sind hell</translation>
    </message>
    <message>
        <source>Little shadow is left: %1 of the hair stays dark</source>
        <translation>Wenig Schatten bleibt: %1 des Haars bleiben dunkel</translation>
    </message>
    <message>
        <source>Very light, cool pieces over darker hair may look grey at %1</source>
        <translation>Sehr helle, kühle Strähnen über dunklerem Haar können grau wirken: %1</translation>
    </message>
    <message>
        <source>Regrowth shows after about %1 %2</source>
        <translation>Nachwuchs zeigt sich nach etwa %1, %2</translation>
    </message>
    <message>
        <source>%1 misses its aim: %2</source>
        <translation>%1 verfehlt ihr Ziel: %2</translation>
    </message>
    <message>
        <source>it looks %1 levels lighter than wanted</source>
        <translation>sie wirkt %1 Tonhöhen heller als gewünscht</translation>
    </message>
    <message>
        <source>it looks %1 levels darker than wanted</source>
        <translation>sie wirkt %1 Tonhöhen dunkler als gewünscht</translation>
    </message>
    <message>
        <source>its lightest hair looks %1 levels lighter than allowed</source>
        <translation>das hellste Haar wirkt %1 Tonhöhen heller als erlaubt</translation>
    </message>
    <message>
        <source>its darkest hair looks %1 levels darker than allowed</source>
        <translation>das dunkelste Haar wirkt %1 Tonhöhen dunkler als erlaubt</translation>
    </message>
    <message>
        <source>its contrast is not the one wanted</source>
        <translation>der Kontrast ist nicht der gewünschte</translation>
    </message>
    <message>
        <source>Hair that has farther to lift is placed last: %1 more than the first pieces</source>
        <translation>Haar, das weiter aufhellen soll, kommt zuletzt: %1 mehr als die ersten Strähnen</translation>
    </message>
    <message>
        <source>worn down</source>
        <translation>offen getragen</translation>
    </message>
    <message>
        <source>with the part %1 mm to the client&apos;s right</source>
        <translation>mit dem Scheitel %1 mm zur rechten Kopfseite</translation>
    </message>
    <message>
        <source>with the part %1 mm to the client&apos;s left</source>
        <translation>mit dem Scheitel %1 mm zur linken Kopfseite</translation>
    </message>
    <message>
        <source>worn half up</source>
        <translation>halb hochgesteckt</translation>
    </message>
    <message>
        <source>tied back</source>
        <translation>zurückgebunden</translation>
    </message>
    <message>
        <source>with the crown opened</source>
        <translation>mit geöffneter Wirbelpartie</translation>
    </message>
    <message>
        <source>blown by wind</source>
        <translation>im Wind</translation>
    </message>
    <message>
        <source>with a layer raised</source>
        <translation>mit angehobener Lage</translation>
    </message>
    <message>
        <source>face frame left</source>
        <translation>Gesichtsrahmen links</translation>
    </message>
    <message>
        <source>face frame right</source>
        <translation>Gesichtsrahmen rechts</translation>
    </message>
    <message>
        <source>front top</source>
        <translation>vorderer Oberkopf</translation>
    </message>
    <message>
        <source>top</source>
        <translation>Oberkopf</translation>
    </message>
    <message>
        <source>crown</source>
        <translation>Wirbelpartie</translation>
    </message>
    <message>
        <source>left side</source>
        <translation>linke Seite</translation>
    </message>
    <message>
        <source>right side</source>
        <translation>rechte Seite</translation>
    </message>
    <message>
        <source>upper back</source>
        <translation>oberer Hinterkopf</translation>
    </message>
    <message>
        <source>middle back</source>
        <translation>mittlere Rückpartie</translation>
    </message>
    <message>
        <source>ends at the back</source>
        <translation>Spitzen hinten</translation>
    </message>
    <message>
        <source>nape</source>
        <translation>Nacken</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>ganzer Kopf</translation>
    </message>
    <message>
        <source>the whole look</source>
        <translation>der ganze Look</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>sides</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>temple</source>
        <translation>Schläfe</translation>
    </message>
    <message>
        <source>back</source>
        <translation>Hinterkopf</translation>
    </message>
    <message>
        <source>off the hair</source>
        <translation>neben dem Haar</translation>
    </message>
    <message>
        <source>two clear levels</source>
        <translation>zwei klare Stufen</translation>
    </message>
    <message>
        <source>soft</source>
        <translation>weich</translation>
    </message>
    <message>
        <source>one tone</source>
        <translation>ein Ton</translation>
    </message>
    <message>
        <source>too little hair to say</source>
        <translation>zu wenig Haar, um es zu sagen</translation>
    </message>
    <message>
        <source>neutral</source>
        <translation>neutral</translation>
    </message>
    <message>
        <source>coppery</source>
        <translation>kupfrig</translation>
    </message>
    <message>
        <source>golden</source>
        <translation>golden</translation>
    </message>
    <message>
        <source>warm</source>
        <translation>warm</translation>
    </message>
    <message>
        <source>cool</source>
        <translation>kühl</translation>
    </message>
    <message>
        <source>%1 steps of lightness (L*)</source>
        <translation>%1 Helligkeitsstufen (L*)</translation>
    </message>
    <message>
        <source>%1 cm²</source>
        <translation>%1 cm²</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 levels</source>
        <translation>%1 Tonhöhen</translation>
    </message>
    <message>
        <source>%1 weeks</source>
        <translation>%1 Wochen</translation>
    </message>
    <message>
        <source>%1 piece</source>
        <translation>%1 Strähne</translation>
    </message>
    <message>
        <source>%1 pieces</source>
        <translation>%1 Strähnen</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 to %2 mm</source>
        <translation>%1 bis %2 mm</translation>
    </message>
    <message>
        <source>%1 to %2 levels</source>
        <translation>%1 bis %2 Tonhöhen</translation>
    </message>
    <message>
        <source>%1 to %2 degrees</source>
        <translation>%1 bis %2 Grad</translation>
    </message>
    <message>
        <source>%1 to %2 per cm2</source>
        <translation>%1 bis %2 je cm²</translation>
    </message>
    <message>
        <source>%1 to %2 um</source>
        <translation>%1 bis %2 µm</translation>
    </message>
    <message>
        <source>%1 mm behind the front hairline</source>
        <translation>%1 mm hinter der vorderen Haarlinie</translation>
    </message>
    <message>
        <source>%1 mm before the front hairline</source>
        <translation>%1 mm vor der vorderen Haarlinie</translation>
    </message>
    <message>
        <source>%1 mm below the crown</source>
        <translation>%1 mm unter dem Wirbelpunkt</translation>
    </message>
    <message>
        <source>%1 mm above the crown</source>
        <translation>%1 mm über dem Wirbelpunkt</translation>
    </message>
    <message>
        <source>%1 mm above the ear point</source>
        <translation>%1 mm über dem Ohrpunkt</translation>
    </message>
    <message>
        <source>%1 mm below the ear point</source>
        <translation>%1 mm unter dem Ohrpunkt</translation>
    </message>
    <message>
        <source>on the centre line</source>
        <translation>auf der Mittellinie</translation>
    </message>
    <message>
        <source>%1 mm left of centre</source>
        <translation>%1 mm links der Mitte</translation>
    </message>
    <message>
        <source>%1 mm right of centre</source>
        <translation>%1 mm rechts der Mitte</translation>
    </message>
    <message>
        <source>%1 mm outside the hairline</source>
        <translation>%1 mm außerhalb der Haarlinie</translation>
    </message>
    <message>
        <source>%1 mm from the hairline</source>
        <translation>%1 mm von der Haarlinie</translation>
    </message>
    <message>
        <source>Make it thinner: %1 mm</source>
        <translation>Dünner machen: %1 mm</translation>
    </message>
    <message>
        <source>Split the width: strips of %1 mm with left-outs between</source>
        <translation>Die Breite teilen: Streifen von %1 mm mit Auslassungen dazwischen</translation>
    </message>
    <message>
        <source>Drop the middle of its length: leave %1 mm dark</source>
        <translation>Die Mitte der Länge aussparen: %1 mm dunkel lassen</translation>
    </message>
    <message>
        <source>Drop the middle of its width: a left-out of %1 mm along it</source>
        <translation>Die Mitte der Breite aussparen: eine Auslassung von %1 mm der Länge nach</translation>
    </message>
    <message>
        <source>Start lower: %1 mm off the scalp</source>
        <translation>Tiefer beginnen: %1 mm über der Kopfhaut</translation>
    </message>
    <message>
        <source>Backcomb deeper, and push more of it back: pushed hair ends %1 mm off the scalp</source>
        <translation>Tiefer toupieren und mehr zurückschieben: Zurückgeschobenes Haar endet %1 mm über der Kopfhaut</translation>
    </message>
    <message>
        <source>Break it with a left-out of %1 mm straight across</source>
        <translation>Mit einer Auslassung von %1 mm quer unterbrechen</translation>
    </message>
    <message>
        <source>Add a light piece of %1 mm</source>
        <translation>Eine helle Strähne von %1 mm hinzufügen</translation>
    </message>
    <message>
        <source>Take less: %1 of the hair in it</source>
        <translation>Weniger nehmen: %1 des Haars darin</translation>
    </message>
    <message>
        <source>Take %1 away; their hair stays dark</source>
        <translation>%1 wegnehmen; ihr Haar bleibt dunkel</translation>
    </message>
    <message>
        <source>Use more: add %1</source>
        <translation>Mehr verwenden: %1 hinzufügen</translation>
    </message>
    <message>
        <source>%1. Not in the picture any more (%2 before)</source>
        <translation>%1. Nicht mehr im Bild (vorher %2)</translation>
    </message>
    <message>
        <source>%1. It shows less: %2 instead of %3</source>
        <translation>%1. Es zeigt sich weniger: %2 statt %3</translation>
    </message>
    <message>
        <source>%1. It leaves smaller ones: the largest %2 instead of %3</source>
        <translation>%1. Es bleiben kleinere: der größte %2 statt %3</translation>
    </message>
    <message>
        <source>%1. It still shows: %2 instead of %3</source>
        <translation>%1. Es zeigt sich noch: %2 statt %3</translation>
    </message>
    <message>
        <source>Keeps every piece and changes as little as will do</source>
        <translation>Behält jede Strähne und ändert so wenig wie nötig</translation>
    </message>
    <message>
        <source>Keeps every piece and its thickness; changes start and backcomb only</source>
        <translation>Behält jede Strähne und ihre Dicke; ändert nur Beginn und Toupieren</translation>
    </message>
    <message>
        <source>Leaves out pieces that hardly show, then changes the rest</source>
        <translation>Lässt Strähnen weg, die sich kaum zeigen, und ändert dann den Rest</translation>
    </message>
    <message>
        <source>%1: %2 piece left out</source>
        <translation>%1: %2 Strähne weggelassen</translation>
    </message>
    <message>
        <source>%1: %2 pieces left out</source>
        <translation>%1: %2 Strähnen weggelassen</translation>
    </message>
    <message>
        <source>%1 (%2 piece): %3</source>
        <translation>%1 (%2 Strähne): %3</translation>
    </message>
    <message>
        <source>%1 (%2 pieces): %3</source>
        <translation>%1 (%2 Strähnen): %3</translation>
    </message>
    <message>
        <source>thickness %1 to %2 mm</source>
        <translation>Dicke von %1 auf %2 mm</translation>
    </message>
    <message>
        <source>thickness on average %1 to %2 mm</source>
        <translation>Dicke im Mittel von %1 auf %2 mm</translation>
    </message>
    <message>
        <source>taken share %1 to %2 %</source>
        <translation>genommener Anteil von %1 auf %2 %</translation>
    </message>
    <message>
        <source>taken share on average %1 to %2 %</source>
        <translation>genommener Anteil im Mittel von %1 auf %2 %</translation>
    </message>
    <message>
        <source>start %1 to %2 mm off the scalp</source>
        <translation>Beginn von %1 auf %2 mm über der Kopfhaut</translation>
    </message>
    <message>
        <source>start on average %1 to %2 mm off the scalp</source>
        <translation>Beginn im Mittel von %1 auf %2 mm über der Kopfhaut</translation>
    </message>
    <message>
        <source>no backcomb (%1 mm before)</source>
        <translation>nicht toupiert (vorher %1 mm)</translation>
    </message>
    <message>
        <source>no backcomb (on average %1 mm before)</source>
        <translation>nicht toupiert (vorher im Mittel %1 mm)</translation>
    </message>
    <message>
        <source>backcomb depth %1 to %2 mm</source>
        <translation>Toupiertiefe von %1 auf %2 mm</translation>
    </message>
    <message>
        <source>backcomb depth on average %1 to %2 mm</source>
        <translation>Toupiertiefe im Mittel von %1 auf %2 mm</translation>
    </message>
    <message>
        <source>pushed share %1 to %2 %</source>
        <translation>zurückgeschobener Anteil von %1 auf %2 %</translation>
    </message>
    <message>
        <source>pushed share on average %1 to %2 %</source>
        <translation>zurückgeschobener Anteil im Mittel von %1 auf %2 %</translation>
    </message>
    <message>
        <source>beside the opening</source>
        <translation>neben der Öffnung</translation>
    </message>
    <message>
        <source>%1 is %2, allowed is %3</source>
        <translation>%1 ist %2, erlaubt ist %3</translation>
    </message>
    <message>
        <source>the plan has no choice; it needs at least one</source>
        <translation>der Plan hat keine Variante; er braucht mindestens eine</translation>
    </message>
    <message>
        <source>the active choice &quot;%1&quot; is not among the choices</source>
        <translation>die aktive Variante „%1“ ist nicht unter den Varianten</translation>
    </message>
    <message>
        <source>belongs to the choice &quot;%1&quot;, which does not exist</source>
        <translation>gehört zur Variante „%1“, die es nicht gibt</translation>
    </message>
    <message>
        <source>belongs to the section &quot;%1&quot;, which does not exist</source>
        <translation>gehört zur Abteilung „%1“, die es nicht gibt</translation>
    </message>
    <message>
        <source>belongs to the section &quot;%1&quot; of another choice</source>
        <translation>gehört zur Abteilung „%1“ einer anderen Variante</translation>
    </message>
    <message>
        <source>names the formula &quot;%1&quot;, which does not exist</source>
        <translation>nennt die Rezeptur „%1“, die es nicht gibt</translation>
    </message>
    <message>
        <source>is the twin of &quot;%1&quot;, which does not exist</source>
        <translation>ist der Zwilling von „%1“, das es nicht gibt</translation>
    </message>
    <message>
        <source>is the twin of &quot;%1&quot;, which is a twin itself; name the one that stands on its own</source>
        <translation>ist der Zwilling von „%1“, das selbst ein Zwilling ist; das eigenständige nennen</translation>
    </message>
    <message>
        <source>reaches %1 mm outside the hairline; at most 15 mm is allowed</source>
        <translation>reicht %1 mm über die Haarlinie hinaus; höchstens 15 mm sind erlaubt</translation>
    </message>
    <message>
        <source>its line has no length; draw it between two places</source>
        <translation>die Linie hat keine Länge; zwischen zwei Stellen zeichnen</translation>
    </message>
    <message>
        <source>head measures: %1</source>
        <translation>Kopfmaße: %1</translation>
    </message>
    <message>
        <source>starts at or near the scalp; does the leaflet allow scalp contact? (%1) Check the leaflet</source>
        <translation>beginnt an oder nahe der Kopfhaut; erlaubt die Gebrauchsanweisung Kontakt mit der Kopfhaut? (%1) Die Gebrauchsanweisung prüfen</translation>
    </message>
    <message>
        <source>reaches the scalp; does the leaflet allow scalp contact? (%1) Check the leaflet</source>
        <translation>reicht an die Kopfhaut; erlaubt die Gebrauchsanweisung Kontakt mit der Kopfhaut? (%1) Die Gebrauchsanweisung prüfen</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>poor</source>
        <translation>schlecht</translation>
    </message>
    <message>
        <source>not checked</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>backcombing where the hair&apos;s condition is %1: check elasticity</source>
        <translation>Toupieren, wo der Zustand des Haars so vermerkt ist: %1. Die Elastizität prüfen</translation>
    </message>
    <message>
        <source>lightener over hair that is already light: check the strength of the hair, test a strand</source>
        <translation>Blondierung über schon hellem Haar: die Festigkeit des Haars prüfen, an einer Probesträhne testen</translation>
    </message>
    <message>
        <source>lightener over hair in poor condition: check the strength of the hair, test a strand</source>
        <translation>Blondierung über Haar in schlechtem Zustand: die Festigkeit des Haars prüfen, an einer Probesträhne testen</translation>
    </message>
    <message>
        <source>circumference, length and breadth do not fit one head; measure again</source>
        <translation>Umfang, Länge und Breite ergeben keinen Kopf; noch einmal messen</translation>
    </message>
    <message>
        <source>%1 %2 is unusual (most heads: %3)</source>
        <translation>%1 %2 ist ungewöhnlich (die meisten Köpfe: %3)</translation>
    </message>
    <message>
        <source>unknown assumption &quot;%1&quot;; it is kept, not used</source>
        <translation>unbekannte Annahme „%1“; sie bleibt, wird aber nicht verwendet</translation>
    </message>
    <message>
        <source>is no longer the mirror of its source</source>
        <translation>ist nicht mehr das Spiegelbild der anderen Seite</translation>
    </message>
    <message>
        <source>more than one piece is number %1</source>
        <translation>mehr als eine Strähne ist Nummer %1</translation>
    </message>
    <message>
        <source>the backcomb depth lies nearer the scalp than the start</source>
        <translation>die Toupiertiefe liegt näher an der Kopfhaut als der Beginn</translation>
    </message>
    <message>
        <source>the end formula takes over before the start</source>
        <translation>die Spitzenrezeptur übernimmt vor dem Beginn</translation>
    </message>
    <message>
        <source>stops before it starts</source>
        <translation>endet, bevor sie beginnt</translation>
    </message>
    <message>
        <source>the hair there is at most %1 mm long and ends before the start</source>
        <translation>das Haar dort ist höchstens %1 mm lang und endet vor dem Beginn</translation>
    </message>
    <message>
        <source>the hair there is at most %1 mm long and ends before the backcomb depth</source>
        <translation>das Haar dort ist höchstens %1 mm lang und endet vor der Toupiertiefe</translation>
    </message>
    <message>
        <source>a drop-out lies beyond the end of the line (%1 mm)</source>
        <translation>eine Aussparung liegt hinter dem Ende der Linie (%1 mm)</translation>
    </message>
    <message>
        <source>has gaps but no teeth</source>
        <translation>hat Lücken, aber keine Zähne</translation>
    </message>
    <message>
        <source>is woven, but its teeth and gaps are not given; the taken share stands for them</source>
        <translation>ist gewebt, aber ohne Angabe von Zähnen und Lücken; der genommene Anteil steht dafür</translation>
    </message>
    <message>
        <source>the level it lifts to does not lie between its low and high</source>
        <translation>die Tonhöhe, auf die sie aufhellt, liegt nicht zwischen mindestens und höchstens</translation>
    </message>
    <message>
        <source>want the same hair (up to %1 mm): the first of them in the order has it</source>
        <translation>wollen dasselbe Haar (bis %1 mm): die erste in der Reihenfolge hat es</translation>
    </message>
    <message>
        <source>its outline crosses itself; move a corner so that it does not</source>
        <translation>ihr Umriss kreuzt sich; eine Ecke so verschieben, dass er es nicht tut</translation>
    </message>
    <message>
        <source>has no room for half a piece (%1 mm across its rows); make it larger or its pieces thinner</source>
        <translation>hat keinen Platz für eine halbe Strähne (%1 mm quer zu den Passées); größer oder ihre Strähnen dünner machen</translation>
    </message>
    <message>
        <source>would hold more pieces than a section may have; make them thicker or leave more out</source>
        <translation>hätte mehr Strähnen, als eine Abteilung haben darf; dicker machen oder mehr auslassen</translation>
    </message>
    <message>
        <source>holds so much that how it lies was not checked whole</source>
        <translation>enthält so viel, dass nicht ganz geprüft wurde, wie es liegt</translation>
    </message>
    <message>
        <source>the target for &quot;%1&quot; contradicts itself: the level must lie between darkest and brightest</source>
        <translation>das Ziel für „%1“ widerspricht sich: Die Tonhöhe muss zwischen dem Dunkelsten und dem Hellsten liegen</translation>
    </message>
    <message>
        <source>has a target for the unknown region &quot;%1&quot;; it is kept, not used</source>
        <translation>hat ein Ziel für die unbekannte Partie „%1“; es bleibt, wird aber nicht verwendet</translation>
    </message>
    <message>
        <source>%1, entry %2, ends before it begins</source>
        <translation>%1, Eintrag %2, endet, bevor er beginnt</translation>
    </message>
    <message>
        <source>bands</source>
        <translation>Farbbänder</translation>
    </message>
    <message>
        <source>scattered</source>
        <translation>helles Haar</translation>
    </message>
    <message>
        <source>circumference</source>
        <translation>Umfang</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>breadth</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>ear-to-ear</source>
        <translation>Ohr zu Ohr</translation>
    </message>
    <message>
        <source>no number</source>
        <translation>keine Zahl</translation>
    </message>
    <message>
        <source>breadth %1 mm for a length of %2 mm; at most %3 mm would fit</source>
        <translation>Breite %1 mm bei einer Länge von %2 mm; höchstens %3 mm würden passen</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>diese Datei gibt es nicht</translation>
    </message>
    <message>
        <source>this is a folder; a plan file is needed</source>
        <translation>das ist ein Ordner; nötig ist eine Plandatei</translation>
    </message>
    <message>
        <source>the file could not be read: %1</source>
        <translation>die Datei ließ sich nicht lesen: %1</translation>
    </message>
    <message>
        <source>the file is empty; a plan is JSON text</source>
        <translation>die Datei ist leer; ein Plan ist JSON-Text</translation>
    </message>
    <message>
        <source>the file has %1 bytes; a plan has at most %2</source>
        <translation>die Datei hat %1 Bytes; ein Plan hat höchstens %2</translation>
    </message>
    <message>
        <source>the file could not be written: %1</source>
        <translation>die Datei ließ sich nicht schreiben: %1</translation>
    </message>
    <message>
        <source>what was written does not read back the same; the file on disk was left as it was</source>
        <translation>beim Zurücklesen war das Geschriebene nicht dasselbe; die Datei auf dem Datenträger blieb, wie sie war</translation>
    </message>
    <message>
        <source>this is not valid JSON: %1</source>
        <translation>das ist kein gültiges JSON: %1</translation>
    </message>
    <message>
        <source>nested deeper than %1 levels</source>
        <translation>tiefer verschachtelt als %1 Ebenen</translation>
    </message>
    <message>
        <source>the key &quot;%1&quot; stands twice</source>
        <translation>der Schlüssel „%1“ steht zweimal</translation>
    </message>
    <message>
        <source>a number is too large to be read: %1</source>
        <translation>eine Zahl ist zu groß, um gelesen zu werden: %1</translation>
    </message>
    <message>
        <source>the text is not UTF-8</source>
        <translation>der Text ist nicht UTF-8</translation>
    </message>
    <message>
        <source>this JSON is not a plan: %1</source>
        <translation>dieses JSON ist kein Plan: %1</translation>
    </message>
    <message>
        <source>this JSON is not a pattern: %1</source>
        <translation>dieses JSON ist kein Muster: %1</translation>
    </message>
    <message>
        <source>this JSON is not a clip: %1</source>
        <translation>dieses JSON ist kein Ausschnitt: %1</translation>
    </message>
    <message>
        <source>the plan was written in format %1; this program reads up to format %2, so a newer program is needed</source>
        <translation>der Plan wurde in Format %1 geschrieben; dieses Programm liest bis Format %2, ein neueres Programm ist also nötig</translation>
    </message>
    <message>
        <source>the plan says format %1; known formats are 1 to %2</source>
        <translation>der Plan nennt Format %1; bekannt sind die Formate 1 bis %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is missing</source>
        <translation>„%1“ fehlt</translation>
    </message>
    <message>
        <source>found %1, needs %2</source>
        <translation>gefunden: %1, nötig: %2</translation>
    </message>
    <message>
        <source>found %1, allowed is %2</source>
        <translation>gefunden: %1, erlaubt: %2</translation>
    </message>
    <message>
        <source>found &quot;%1&quot;, allowed: %2</source>
        <translation>gefunden: „%1“, erlaubt: %2</translation>
    </message>
    <message>
        <source>found %1, at most %2</source>
        <translation>gefunden: %1, höchstens %2</translation>
    </message>
    <message>
        <source>the text has %1 bytes, at most %2</source>
        <translation>der Text hat %1 Bytes, höchstens %2</translation>
    </message>
    <message>
        <source>the id &quot;%1&quot; is used twice</source>
        <translation>die Kennung „%1“ wird zweimal verwendet</translation>
    </message>
    <message>
        <source>there is no item with the id &quot;%1&quot;</source>
        <translation>es gibt nichts mit der Kennung „%1“</translation>
    </message>
    <message>
        <source>&quot;%1&quot; leads back to itself</source>
        <translation>„%1“ führt zu sich selbst zurück</translation>
    </message>
    <message>
        <source>the point lies off the head: %1, allowed is %2</source>
        <translation>der Punkt liegt neben dem Kopf: %1, erlaubt ist %2</translation>
    </message>
    <message>
        <source>the head measures contradict each other: %1</source>
        <translation>die Kopfmaße widersprechen sich: %1</translation>
    </message>
    <message>
        <source>unknown name &quot;%1&quot;; known: %2</source>
        <translation>unbekannter Name „%1“; bekannt: %2</translation>
    </message>
    <message>
        <source>cancelled</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <source>there is not enough memory for this look; fewer locks or fewer views need less</source>
        <translation>der Speicher reicht für diesen Look nicht; weniger Haarbüschel oder weniger Ansichten brauchen weniger</translation>
    </message>
    <message>
        <source>unknown error</source>
        <translation>unbekannter Fehler</translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation>Zeile %1, Spalte %2</translation>
    </message>
    <message>
        <source>it is not a regular file</source>
        <translation>es ist keine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>it changed while it was being read</source>
        <translation>sie änderte sich beim Lesen</translation>
    </message>
    <message>
        <source>it cannot be renamed</source>
        <translation>sie lässt sich nicht umbenennen</translation>
    </message>
    <message>
        <source>it cannot be removed</source>
        <translation>sie lässt sich nicht entfernen</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>der Ordner lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>it is %1</source>
        <translation>es ist %1</translation>
    </message>
    <message>
        <source>it needs &quot;format&quot;: &quot;%1&quot;</source>
        <translation>nötig ist &quot;format&quot;: &quot;%1&quot;</translation>
    </message>
    <message>
        <source>the number %1</source>
        <translation>die Zahl %1</translation>
    </message>
    <message>
        <source>text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>ein Objekt</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a number, %1</source>
        <translation>eine Zahl, %1</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>a whole number, %1</source>
        <translation>eine ganze Zahl, %1</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>wahr oder falsch</translation>
    </message>
    <message>
        <source>an id</source>
        <translation>eine Kennung</translation>
    </message>
    <message>
        <source>one of %1</source>
        <translation>eines von %1</translation>
    </message>
    <message>
        <source>each once of %1</source>
        <translation>jedes einmal von %1</translation>
    </message>
    <message>
        <source>%1 entry</source>
        <translation>%1 Eintrag</translation>
    </message>
    <message>
        <source>%1 entries</source>
        <translation>%1 Einträge</translation>
    </message>
    <message>
        <source>%1 to %2 entries</source>
        <translation>%1 bis %2 Einträge</translation>
    </message>
    <message>
        <source>%1 bytes</source>
        <translation>%1 Bytes</translation>
    </message>
    <message>
        <source>at most %1 bytes</source>
        <translation>höchstens %1 Bytes</translation>
    </message>
    <message>
        <source>more than %1 values</source>
        <translation>mehr als %1 Werte</translation>
    </message>
    <message>
        <source>more than %1 points in all</source>
        <translation>mehr als %1 Punkte insgesamt</translation>
    </message>
    <message>
        <source>%1 mm below the hairline</source>
        <translation>%1 mm unter der Haarlinie</translation>
    </message>
    <message>
        <source>the hair-bearing part of the head</source>
        <translation>der behaarte Teil des Kopfs</translation>
    </message>
    <message>
        <source>text with a line break or control character</source>
        <translation>Text mit Zeilenumbruch oder Steuerzeichen</translation>
    </message>
    <message>
        <source>one line of plain text</source>
        <translation>eine Zeile einfacher Text</translation>
    </message>
    <message>
        <source>text with a control character</source>
        <translation>Text mit Steuerzeichen</translation>
    </message>
    <message>
        <source>plain text; lines end with a line feed</source>
        <translation>einfacher Text; Zeilen enden mit einem Zeilenvorschub</translation>
    </message>
    <message>
        <source>a date such as &quot;2024-05-31&quot;, or &quot;&quot;</source>
        <translation>ein Datum wie &quot;2024-05-31&quot;, oder &quot;&quot;</translation>
    </message>
    <message>
        <source>an id: 1 to 64 letters, digits, &apos;-&apos;, &apos;_&apos; or &apos;.&apos;</source>
        <translation>eine Kennung: 1 bis 64 Buchstaben, Ziffern, &apos;-&apos;, &apos;_&apos; oder &apos;.&apos;</translation>
    </message>
    <message>
        <source>a point [bearing, drop] in degrees</source>
        <translation>ein Punkt [bearing, drop] in Grad</translation>
    </message>
    <message>
        <source>a stretch [from, to] in mm</source>
        <translation>ein Stück [von, bis] in mm</translation>
    </message>
    <message>
        <source>a stretch that ends after it begins</source>
        <translation>ein Stück, das endet, nachdem es beginnt</translation>
    </message>
    <message>
        <source>an object of numbers</source>
        <translation>ein Objekt aus Zahlen</translation>
    </message>
    <message>
        <source>the name of an assumption</source>
        <translation>der Name einer Annahme</translation>
    </message>
    <message>
        <source>three levels [root, middle, end]</source>
        <translation>drei Tonhöhen [Ansatz, Mitte, Spitze]</translation>
    </message>
    <message>
        <source>unexpected text</source>
        <translation>unerwarteter Text</translation>
    </message>
    <message>
        <source>%1 sections</source>
        <translation>%1 Abteilungen</translation>
    </message>
    <message>
        <source>%1 notes</source>
        <translation>%1 Notizen</translation>
    </message>
    <message>
        <source>%1 formulas</source>
        <translation>%1 Rezepturen</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 Punkte</translation>
    </message>
    <message>
        <source>%1 choices</source>
        <translation>%1 Varianten</translation>
    </message>
    <message>
        <source>too large for memory</source>
        <translation>zu groß für den Speicher</translation>
    </message>
    <message>
        <source>a smaller one</source>
        <translation>ein kleineres</translation>
    </message>
    <message>
        <source>%1 x %2 pixels</source>
        <translation>%1 x %2 Pixel</translation>
    </message>
    <message>
        <source>1 to %1 pixels a side</source>
        <translation>1 bis %1 Pixel je Seite</translation>
    </message>
    <message>
        <source>picture size</source>
        <translation>Bildgröße</translation>
    </message>
    <message>
        <source>a folder</source>
        <translation>ein Ordner</translation>
    </message>
    <message>
        <source>a file name</source>
        <translation>ein Dateiname</translation>
    </message>
    <message>
        <source>tape measure round the head</source>
        <translation>Maßband um den Kopf</translation>
    </message>
    <message>
        <source>forehead to the back of the head</source>
        <translation>Stirn bis Hinterkopf</translation>
    </message>
    <message>
        <source>widest, above the ears</source>
        <translation>breiteste Stelle, über den Ohren</translation>
    </message>
    <message>
        <source>ear hole to ear hole over the top</source>
        <translation>von Ohröffnung zu Ohröffnung über den Kopf</translation>
    </message>
    <message>
        <source>front hairline moved up (+) or down (-)</source>
        <translation>vordere Haarlinie nach oben (+) oder unten (-) verschoben</translation>
    </message>
    <message>
        <source>hairline at the temples moved up or down</source>
        <translation>Haarlinie an den Schläfen nach oben oder unten verschoben</translation>
    </message>
    <message>
        <source>hairline over the ears moved up or down</source>
        <translation>Haarlinie über den Ohren nach oben oder unten verschoben</translation>
    </message>
    <message>
        <source>nape hairline moved up or down</source>
        <translation>Nackenhaarlinie nach oben oder unten verschoben</translation>
    </message>
    <message>
        <source>hairs on a square centimetre</source>
        <translation>Haare auf einem Quadratzentimeter</translation>
    </message>
    <message>
        <source>thickness of one hair</source>
        <translation>Dicke eines Haars</translation>
    </message>
    <message>
        <source>length of a zone&apos;s hair, stretched</source>
        <translation>Länge des Haars einer Zone, gestreckt</translation>
    </message>
    <message>
        <source>0 one length at the hem, 1 one length from the scalp</source>
        <translation>0 eine Länge am Saum, 1 eine Länge ab der Kopfhaut</translation>
    </message>
    <message>
        <source>planned hem below the head centre</source>
        <translation>geplanter Saum unter der Mitte des Kopfs</translation>
    </message>
    <message>
        <source>level at root, middle and end</source>
        <translation>Tonhöhe an Ansatz, Mitte und Spitze</translation>
    </message>
    <message>
        <source>natural tone, -1 ash to +1 red-gold</source>
        <translation>Naturton, -1 aschig bis +1 rotgold</translation>
    </message>
    <message>
        <source>share of white hairs</source>
        <translation>Anteil weißer Haare</translation>
    </message>
    <message>
        <source>where the band begins, off the scalp</source>
        <translation>wo das Band beginnt, über der Kopfhaut</translation>
    </message>
    <message>
        <source>where the band ends, off the scalp</source>
        <translation>wo das Band endet, über der Kopfhaut</translation>
    </message>
    <message>
        <source>level of the band</source>
        <translation>Tonhöhe des Bands</translation>
    </message>
    <message>
        <source>share of the hairs that are already light</source>
        <translation>Anteil der Haare, die schon hell sind</translation>
    </message>
    <message>
        <source>where they turn light, off the scalp</source>
        <translation>wo sie hell werden, über der Kopfhaut</translation>
    </message>
    <message>
        <source>where the light ends, off the scalp</source>
        <translation>wo das Helle endet, über der Kopfhaut</translation>
    </message>
    <message>
        <source>level of the light part</source>
        <translation>Tonhöhe des hellen Teils</translation>
    </message>
    <message>
        <source>level when bare, before toner</source>
        <translation>Tonhöhe ohne Toner</translation>
    </message>
    <message>
        <source>lowest level it may lift to</source>
        <translation>niedrigste Tonhöhe, auf die sie aufhellen kann</translation>
    </message>
    <message>
        <source>highest level it may lift to</source>
        <translation>höchste Tonhöhe, auf die sie aufhellen kann</translation>
    </message>
    <message>
        <source>level after toner</source>
        <translation>Tonhöhe nach dem Toner</translation>
    </message>
    <message>
        <source>full width square to the line</source>
        <translation>ganze Breite quer zur Linie</translation>
    </message>
    <message>
        <source>share taken of the hair inside the teeth</source>
        <translation>Anteil, der vom Haar in den Zähnen genommen wird</translation>
    </message>
    <message>
        <source>width of a tooth, 0 for none</source>
        <translation>Breite eines Zahns, 0 für keinen</translation>
    </message>
    <message>
        <source>gap between teeth</source>
        <translation>Lücke zwischen den Zähnen</translation>
    </message>
    <message>
        <source>stretch of the line left dark</source>
        <translation>Stück der Linie, das dunkel bleibt</translation>
    </message>
    <message>
        <source>where lightener starts, off the scalp</source>
        <translation>wo die Blondierung beginnt, über der Kopfhaut</translation>
    </message>
    <message>
        <source>blend length at the start</source>
        <translation>Übergangslänge am Beginn</translation>
    </message>
    <message>
        <source>share of the thickness the brush reaches</source>
        <translation>Anteil der Dicke, den der Pinsel erreicht</translation>
    </message>
    <message>
        <source>where the end formula takes over</source>
        <translation>wo die Spitzenrezeptur übernimmt</translation>
    </message>
    <message>
        <source>where lightener stops</source>
        <translation>wo die Blondierung endet</translation>
    </message>
    <message>
        <source>place in the working order</source>
        <translation>Platz in der Reihenfolge der Arbeit</translation>
    </message>
    <message>
        <source>where pushed hairs end, off the scalp</source>
        <translation>wo zurückgeschobene Haare enden, über der Kopfhaut</translation>
    </message>
    <message>
        <source>share of the taken hairs pushed back</source>
        <translation>Anteil der genommenen Haare, der zurückgeschoben wird</translation>
    </message>
    <message>
        <source>blend length at the pushed start</source>
        <translation>Übergangslänge am zurückgeschobenen Beginn</translation>
    </message>
    <message>
        <source>thickness of the first piece</source>
        <translation>Dicke der ersten Strähne</translation>
    </message>
    <message>
        <source>thickness of the last piece</source>
        <translation>Dicke der letzten Strähne</translation>
    </message>
    <message>
        <source>left out after the first piece</source>
        <translation>ausgelassen nach der ersten Strähne</translation>
    </message>
    <message>
        <source>left out before the last piece</source>
        <translation>ausgelassen vor der letzten Strähne</translation>
    </message>
    <message>
        <source>start of the first piece, off the scalp</source>
        <translation>Beginn der ersten Strähne, über der Kopfhaut</translation>
    </message>
    <message>
        <source>start of the last piece, off the scalp</source>
        <translation>Beginn der letzten Strähne, über der Kopfhaut</translation>
    </message>
    <message>
        <source>backcomb depth of the first piece, 0 for none</source>
        <translation>Toupiertiefe der ersten Strähne, 0 für keine</translation>
    </message>
    <message>
        <source>backcomb depth of the last piece</source>
        <translation>Toupiertiefe der letzten Strähne</translation>
    </message>
    <message>
        <source>share pushed back in the first piece</source>
        <translation>zurückgeschobener Anteil in der ersten Strähne</translation>
    </message>
    <message>
        <source>share pushed back in the last piece</source>
        <translation>zurückgeschobener Anteil in der letzten Strähne</translation>
    </message>
    <message>
        <source>share taken in the first piece</source>
        <translation>genommener Anteil in der ersten Strähne</translation>
    </message>
    <message>
        <source>share taken in the last piece</source>
        <translation>genommener Anteil in der letzten Strähne</translation>
    </message>
    <message>
        <source>width of a foil</source>
        <translation>Breite einer Folie</translation>
    </message>
    <message>
        <source>swing of a zigzag parting, 0 for straight</source>
        <translation>Schwung einer Zickzacklinie, 0 für gerade</translation>
    </message>
    <message>
        <source>thickness of the piece beside the opening</source>
        <translation>Dicke der Strähne neben der Öffnung</translation>
    </message>
    <message>
        <source>left dark where a piece crosses the centre line</source>
        <translation>dunkel gelassen, wo eine Strähne die Mittellinie kreuzt</translation>
    </message>
    <message>
        <source>row, counted from the opening</source>
        <translation>Passée, von der Öffnung aus gezählt</translation>
    </message>
    <message>
        <source>place along the row</source>
        <translation>Platz in der Passée</translation>
    </message>
    <message>
        <source>how far from the scalp a root shadow reaches</source>
        <translation>wie weit ein Ansatzschatten von der Kopfhaut reicht</translation>
    </message>
    <message>
        <source>blend length at its end</source>
        <translation>Übergangslänge an seinem Ende</translation>
    </message>
    <message>
        <source>0 nothing, 1 the typed colour</source>
        <translation>0 nichts, 1 die eingetragene Farbe</translation>
    </message>
    <message>
        <source>level wanted in a region</source>
        <translation>in einer Partie gewünschte Tonhöhe</translation>
    </message>
    <message>
        <source>lightest hair allowed there</source>
        <translation>hellstes dort erlaubtes Haar</translation>
    </message>
    <message>
        <source>darkest hair allowed there</source>
        <translation>dunkelstes dort erlaubtes Haar</translation>
    </message>
    <message>
        <source>0 front, 90 wearer&apos;s right, 180 back</source>
        <translation>0 vorn, 90 rechte Kopfseite, 180 hinten</translation>
    </message>
    <message>
        <source>0 straight up, 90 level</source>
        <translation>0 gerade nach oben, 90 waagerecht</translation>
    </message>
    <message>
        <source>How far the part lands from where it was planned.</source>
        <translation>Wie weit der Scheitel neben seinem geplanten Platz landet.</translation>
    </message>
    <message>
        <source>How far from the part hair still turns away from it.</source>
        <translation>Wie weit vom Scheitel sich Haar noch von ihm wegdreht.</translation>
    </message>
    <message>
        <source>How strongly hair turns away from the part.</source>
        <translation>Wie stark sich Haar vom Scheitel wegdreht.</translation>
    </message>
    <message>
        <source>How wide the whorl turns the hair.</source>
        <translation>Wie weit der Wirbel das Haar dreht.</translation>
    </message>
    <message>
        <source>How strongly the whorl turns the hair.</source>
        <translation>Wie stark der Wirbel das Haar dreht.</translation>
    </message>
    <message>
        <source>How far front and top hair is combed back.</source>
        <translation>Wie weit das Haar vorn und am Oberkopf zurückgekämmt ist.</translation>
    </message>
    <message>
        <source>How strongly hair is kept out of the face.</source>
        <translation>Wie stark Haar aus dem Gesicht gehalten wird.</translation>
    </message>
    <message>
        <source>How far neighbouring locks wander from one direction.</source>
        <translation>Wie weit benachbarte Haarbüschel von einer Richtung abweichen.</translation>
    </message>
    <message>
        <source>How far hanging hair leans in toward the neck.</source>
        <translation>Wie weit sich hängendes Haar zum Hals neigt.</translation>
    </message>
    <message>
        <source>How fast hair gains height over the scalp, per length along the fall.</source>
        <translation>Wie schnell Haar über der Kopfhaut an Höhe gewinnt, je Länge entlang des Falls.</translation>
    </message>
    <message>
        <source>Height at which the body of the hair settles.</source>
        <translation>Höhe, in der sich die Fülle des Haars einstellt.</translation>
    </message>
    <message>
        <source>How far locks of neighbouring layers change places.</source>
        <translation>Wie weit Haarbüschel benachbarter Lagen die Plätze tauschen.</translation>
    </message>
    <message>
        <source>Size of waves and curls against the curl class&apos;s middle.</source>
        <translation>Größe von Wellen und Locken gegenüber der Mitte der Lockenart.</translation>
    </message>
    <message>
        <source>Radius of the tail when tied back.</source>
        <translation>Radius des Zopfs, wenn zurückgebunden.</translation>
    </message>
    <message>
        <source>How many times as strongly the whorl turns hair in wind.</source>
        <translation>Wievielmal so stark der Wirbel das Haar im Wind dreht.</translation>
    </message>
    <message>
        <source>How many times as strongly hair is spread when the hand opens the crown.</source>
        <translation>Wievielmal so stark Haar gespreizt wird, wenn die Hand die Wirbelpartie öffnet.</translation>
    </message>
    <message>
        <source>How far the start varies from lock to lock.</source>
        <translation>Wie weit der Beginn von Haarbüschel zu Haarbüschel schwankt.</translation>
    </message>
    <message>
        <source>How far the start of backcombed hair varies from lock to lock.</source>
        <translation>Wie weit der Beginn toupierten Haars von Haarbüschel zu Haarbüschel schwankt.</translation>
    </message>
    <message>
        <source>Growth: 11.2 mm a month [Loussouarn2005], range 8 to 13.</source>
        <translation>Wachstum: 11,2 mm im Monat [Loussouarn2005], Spanne 8 bis 13.</translation>
    </message>
    <message>
        <source>How far the natural level scale as a whole is off; only its order is certain.</source>
        <translation>Wie weit die Skala der natürlichen Tonhöhen als Ganzes danebenliegt; gewiss ist nur ihre Reihenfolge.</translation>
    </message>
    <message>
        <source>The same for the scale of lightened, bare hair.</source>
        <translation>Dasselbe für die Skala aufgehellten Haars ohne Toner.</translation>
    </message>
    <message>
        <source>Where in its typed span each lift lands.</source>
        <translation>Wo in ihrer eingetragenen Spanne jede Aufhellung landet.</translation>
    </message>
    <message>
        <source>A light patch at the opening larger than this is a block.</source>
        <translation>Eine helle Fläche an der Öffnung, die größer ist, ist ein Block.</translation>
    </message>
    <message>
        <source>A dark patch at the opening larger than this is a block.</source>
        <translation>Eine dunkle Fläche an der Öffnung, die größer ist, ist ein Block.</translation>
    </message>
    <message>
        <source>A patch that follows the opening line for longer than this is an unbroken run.</source>
        <translation>Eine Fläche, die der Öffnungslinie länger folgt, ist ununterbrochen.</translation>
    </message>
    <message>
        <source>How far a patch must differ from its surround to be seen as a block.</source>
        <translation>Wie stark sich eine Fläche von der Umgebung unterscheiden muss, um als Block zu gelten.</translation>
    </message>
    <message>
        <source>The same in lightness, at least.</source>
        <translation>Dasselbe in Helligkeit, mindestens.</translation>
    </message>
    <message>
        <source>What is narrower than this is a ribbon, not a block.</source>
        <translation>Was schmaler ist, ist ein Band und kein Block.</translation>
    </message>
    <message>
        <source>How far beside the opening a patch still counts as being at it.</source>
        <translation>Wie weit neben der Öffnung eine Fläche noch zu ihr zählt.</translation>
    </message>
    <message>
        <source>Fewer 5 mm places than this are too little hair to judge contrast by.</source>
        <translation>Weniger 5-mm-Stellen sind zu wenig Haar, um Kontrast zu beurteilen.</translation>
    </message>
    <message>
        <source>How far apart two clear levels are, at least, after mixing and blurring.</source>
        <translation>Wie weit zwei klare Stufen nach Mischen und Verwischen mindestens auseinanderliegen.</translation>
    </message>
    <message>
        <source>How far apart two levels are, at least, to be soft and not one tone.</source>
        <translation>Wie weit zwei Stufen mindestens auseinanderliegen, um weich und nicht ein Ton zu sein.</translation>
    </message>
    <message>
        <source>A spread below this is one tone whatever its shape.</source>
        <translation>Eine kleinere Streuung ist ein Ton, gleich in welcher Form.</translation>
    </message>
    <message>
        <source>How many of their common widths two clear levels stand apart.</source>
        <translation>Wie viele ihrer gemeinsamen Breiten zwei klare Stufen auseinanderliegen.</translation>
    </message>
    <message>
        <source>Between two clear levels lies less than this in the middle third.</source>
        <translation>Zwischen zwei klaren Stufen liegt im mittleren Drittel weniger als dies.</translation>
    </message>
    <message>
        <source>The smaller of two clear levels has at least this share; half of it for soft.</source>
        <translation>Die kleinere von zwei klaren Stufen hat mindestens diesen Anteil; bei weich die Hälfte davon.</translation>
    </message>
    <message>
        <source>How much of the seen hair may look like one tone where light and dark were planned.</source>
        <translation>Wie viel des sichtbaren Haars wie ein Ton wirken darf, wo Hell und Dunkel geplant waren.</translation>
    </message>
    <message>
        <source>Hair underneath or at the nape with less light in it than this looks bare.</source>
        <translation>Haar darunter oder im Nacken, in dem weniger Helles ist, wirkt leer.</translation>
    </message>
    <message>
        <source>A step between neighbouring regions that looks like a hard edge with a layer raised.</source>
        <translation>Eine Stufe zwischen benachbarten Partien, die bei angehobener Lage wie eine harte Kante wirkt.</translation>
    </message>
    <message>
        <source>How much lighter than the whole look a planned face frame is to look, at least.</source>
        <translation>Wie viel heller als der ganze Look ein geplanter Gesichtsrahmen mindestens wirken soll.</translation>
    </message>
    <message>
        <source>How much of the seen hair is to stay dark, at least.</source>
        <translation>Wie viel des sichtbaren Haars mindestens dunkel bleiben soll.</translation>
    </message>
    <message>
        <source>How far from its target a level may look.</source>
        <translation>Wie weit eine Tonhöhe neben ihrem Ziel wirken darf.</translation>
    </message>
    <message>
        <source>Regrowth that shows sooner than this is early.</source>
        <translation>Nachwuchs, der sich eher zeigt, ist früh.</translation>
    </message>
    <message>
        <source>Stripes that look stronger than this in the salon mirror need a look.</source>
        <translation>Streifen, die im Salonspiegel stärker wirken, brauchen einen Blick.</translation>
    </message>
    <message>
        <source>How much farther the last third of the order may have to lift than the first.</source>
        <translation>Wie viel weiter das letzte Drittel der Reihenfolge aufhellen darf als das erste.</translation>
    </message>
    <message>
        <source>Placing a slice.</source>
        <translation>Einen Slice legen.</translation>
    </message>
    <message>
        <source>Placing a woven piece.</source>
        <translation>Eine gewebte Strähne legen.</translation>
    </message>
    <message>
        <source>Painting a piece.</source>
        <translation>Eine Strähne malen.</translation>
    </message>
    <message>
        <source>Backcombing a piece, on top of placing it.</source>
        <translation>Eine Strähne toupieren, zusätzlich zum Legen.</translation>
    </message>
    <message>
        <source>Stripes whose contrast, as the eye weighs it, is above this are seen.</source>
        <translation>Streifen, deren Kontrast, wie das Auge ihn wiegt, darüber liegt, sind zu sehen.</translation>
    </message>
    <message>
        <source>How fast hair counts less the farther from the opening it lies; a third is left at this distance.</source>
        <translation>Wie schnell Haar weniger zählt, je weiter es von der Öffnung liegt; in dieser Entfernung bleibt ein Drittel.</translation>
    </message>
    <message>
        <source>Regrowth shows once the hair near the opening looks this much different from the first day.</source>
        <translation>Nachwuchs zeigt sich, sobald das Haar nahe der Öffnung um so viel anders wirkt als am ersten Tag.</translation>
    </message>
    <message>
        <source>published</source>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>own assumption</source>
        <translation>eigene Annahme</translation>
    </message>
    <message>
        <source>typed</source>
        <translation>eingetragen</translation>
    </message>
    <message>
        <source>Broken lines at the part</source>
        <translation>Gebrochene Linien am Scheitel</translation>
    </message>
    <message>
        <source>A part that moves from day to day: slanting zigzag partings, finer toward the part, so that no straight line meets it.</source>
        <translation>Ein Scheitel, der von Tag zu Tag wandert: schräge Zickzacklinien, zum Scheitel hin feiner, sodass keine gerade Linie auf ihn trifft.</translation>
    </message>
    <message>
        <source>Very fine hair, where each zigzag shows; when one clear bright part is wanted.</source>
        <translation>Sehr feines Haar, in dem jeder Zacken zu sehen ist; wenn ein klar heller Scheitel gewünscht ist.</translation>
    </message>
    <message>
        <source>Face bright, crown quiet</source>
        <translation>Gesicht hell, Wirbel ruhig</translation>
    </message>
    <message>
        <source>Light where the face is framed while the crown stays as it is: no line shows where the part opens behind.</source>
        <translation>Helles rund um das Gesicht, während die Wirbelpartie bleibt, wie sie ist: Keine Linie zeigt sich, wo der Scheitel hinten auseinanderfällt.</translation>
    </message>
    <message>
        <source>Hair that is mostly worn tied back high; hairlines that are thin or broken off; when the back is to be light as well.</source>
        <translation>Haar, das meist hoch zurückgebunden wird; dünne oder abgebrochene Haarlinien; wenn auch der Hinterkopf hell werden soll.</translation>
    </message>
    <message>
        <source>Fan round the swirl, centre dark</source>
        <translation>Fächer um den Wirbel, Mitte dunkel</translation>
    </message>
    <message>
        <source>A crown that stands up and opens: pieces turn about the swirl, and what lies on the centre line is left dark, so that no block shows when it opens.</source>
        <translation>Eine Wirbelpartie, die aufsteht und sich öffnet: Strähnen drehen um den Wirbel, und was auf der Mittellinie liegt, bleibt dunkel, damit sich beim Öffnen kein Block zeigt.</translation>
    </message>
    <message>
        <source>Two swirls, unless the fan is moved to them; very short hair; when the part is meant to be bright.</source>
        <translation>Zwei Wirbel, sofern der Fächer nicht zu ihnen verschoben wird; sehr kurzes Haar; wenn der Scheitel hell sein soll.</translation>
    </message>
    <message>
        <source>Fine all over</source>
        <translation>Fein über den ganzen Kopf</translation>
    </message>
    <message>
        <source>One even, lighter impression without single stripes; straight to wavy hair of any length, also short.</source>
        <translation>Ein gleichmäßiger, hellerer Eindruck ohne einzelne Streifen; glattes bis welliges Haar jeder Länge, auch kurz.</translation>
    </message>
    <message>
        <source>Very dense coarse hair when time is short (many pieces); when clear ribbons are wanted.</source>
        <translation>Sehr dichtes, dickes Haar bei wenig Zeit (viele Strähnen); wenn klare Bänder gewünscht sind.</translation>
    </message>
    <message>
        <source>Growing toward the apex</source>
        <translation>Zum höchsten Punkt wachsend</translation>
    </message>
    <message>
        <source>A first whole head: pieces and backcomb grow from the nape up, and the last piece beside the part is thin, so that the part may move.</source>
        <translation>Ein erster ganzer Kopf: Strähnen und Toupieren wachsen vom Nacken nach oben, und die letzte Strähne neben dem Scheitel ist dünn, damit der Scheitel wandern darf.</translation>
    </message>
    <message>
        <source>Tight curls, unless backcomb is chosen on purpose; hair whose condition is poor or was not checked; hair shorter than the deepest backcomb.</source>
        <translation>Enge Locken, sofern Toupieren nicht bewusst gewählt wird; Haar, dessen Zustand schlecht ist oder nicht geprüft wurde; Haar, das kürzer ist als die größte Toupiertiefe.</translation>
    </message>
    <message>
        <source>Hem and face, few foils</source>
        <translation>Saum und Gesicht, wenige Folien</translation>
    </message>
    <message>
        <source>A first try or a short visit: light at the hem behind and round the face, nothing above the ridge.</source>
        <translation>Ein erster Versuch oder ein kurzer Besuch: Helles am Saum hinten und um das Gesicht, nichts über der Hutlinie.</translation>
    </message>
    <message>
        <source>Grown-out light that is to be evened; strong layers, where the hem is thin.</source>
        <translation>Herausgewachsenes Helles, das ausgeglichen werden soll; starke Stufen, bei denen der Saum dünn ist.</translation>
    </message>
    <message>
        <source>Light beneath, dark cover</source>
        <translation>Hell darunter, dunkel gedeckt</translation>
    </message>
    <message>
        <source>Light that shows in movement, tied up and when the hair is tucked behind the ear, under a cover that keeps its colour.</source>
        <translation>Helles, das sich in Bewegung, hochgebunden und hinter das Ohr gestrichen zeigt, unter einer Decke, die ihre Farbe behält.</translation>
    </message>
    <message>
        <source>Fine or thin hair, where the light shows through the cover; hair that is always worn down and straight.</source>
        <translation>Feines oder dünnes Haar, bei dem das Helle durch die Decke scheint; Haar, das immer offen und glatt getragen wird.</translation>
    </message>
    <message>
        <source>Painted from the middle down</source>
        <translation>Von der Mitte abwärts gemalt</translation>
    </message>
    <message>
        <source>Lighter lengths with the root left alone: painted on the surface in slanting sections, open to the air.</source>
        <translation>Hellere Längen, der Ansatz bleibt unberührt: auf die Oberfläche gemalt, in schrägen Abteilungen, offen liegend.</translation>
    </message>
    <message>
        <source>Hair shorter than the start; when an even, strong lightening from near the scalp is wanted; hair that is already light at the ends.</source>
        <translation>Haar, das kürzer ist als der Beginn; wenn eine gleichmäßige, starke Aufhellung von nahe der Kopfhaut an gewünscht ist; Haar, das an den Spitzen schon hell ist.</translation>
    </message>
    <message>
        <source>Ribbons from the ridge down</source>
        <translation>Bänder von der Hutlinie abwärts</translation>
    </message>
    <message>
        <source>Clear upright ribbons that show in movement and in waves; the top falls over them, so that they look grown out softly.</source>
        <translation>Klare senkrechte Bänder, die sich in Bewegung und in Wellen zeigen; der Oberkopf fällt darüber, sodass sie weich herausgewachsen wirken.</translation>
    </message>
    <message>
        <source>Fine or thin hair, where ribbons look like stripes; short hair; straight hair, unless stripes are wanted.</source>
        <translation>Feines oder dünnes Haar, bei dem Bänder wie Streifen wirken; kurzes Haar; glattes Haar, sofern keine Streifen gewünscht sind.</translation>
    </message>
    <message>
        <source>Soft root, bold ends</source>
        <translation>Weicher Ansatz, kräftige Spitzen</translation>
    </message>
    <message>
        <source>Long hair that is to be clearly light at the ends and needs no early visit: thick pieces start low and fade in.</source>
        <translation>Langes Haar, das an den Spitzen deutlich hell sein soll und keinen frühen Besuch braucht: Dicke Strähnen beginnen tief und laufen weich ein.</translation>
    </message>
    <message>
        <source>Hair shorter than the backcomb is deep, strong layers, tight curls, and hair whose condition is poor or was not checked.</source>
        <translation>Haar, das kürzer ist als die Toupiertiefe, starke Stufen, enge Locken und Haar, dessen Zustand schlecht ist oder nicht geprüft wurde.</translation>
    </message>
    <message>
        <source>a list of ids</source>
        <translation>eine Liste von Kennungen</translation>
    </message>
    <message>
        <source>a list of taps</source>
        <translation>eine Liste von Einträgen</translation>
    </message>
    <message>
        <source>a list of heads</source>
        <translation>eine Liste von Köpfen</translation>
    </message>
    <message>
        <source>something else</source>
        <translation>etwas anderes</translation>
    </message>
    <message>
        <source>no text</source>
        <translation>kein Text</translation>
    </message>
    <message>
        <source>no list</source>
        <translation>keine Liste</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>yes or no</source>
        <translation>ja oder nein</translation>
    </message>
    <message>
        <source>a date like %1</source>
        <translation>ein Datum wie %1</translation>
    </message>
    <message>
        <source>a PNG picture in base64</source>
        <translation>ein PNG-Bild in Base64</translation>
    </message>
    <message>
        <source>placed, bowl mixed, looked, taken out, rinsed</source>
        <translation>placed, bowl mixed, looked, taken out, rinsed</translation>
    </message>
    <message>
        <source>a piece of this plan</source>
        <translation>eine Strähne dieses Plans</translation>
    </message>
    <message>
        <source>at most %1, the level of the hair: a toner does not lighten</source>
        <translation>höchstens %1, die Tonhöhe des Haars: Ein Toner hellt nicht auf</translation>
    </message>
    <message>
        <source>at most %1, the level that it has</source>
        <translation>höchstens %1, die Tonhöhe, die sie hat</translation>
    </message>
    <message>
        <source>above 0 to %1</source>
        <translation>über 0 bis %1</translation>
    </message>
    <message>
        <source>above 0 to %1 %</source>
        <translation>über 0 bis %1 %</translation>
    </message>
    <message>
        <source>above 0 to %1 volumes</source>
        <translation>über 0 bis %1 Volumen</translation>
    </message>
    <message>
        <source>0 to less than the %1 g that were mixed</source>
        <translation>0 bis weniger als die %1 g, die angemischt wurden</translation>
    </message>
    <message>
        <source>%1 to %2 weeks</source>
        <translation>%1 bis %2 Wochen</translation>
    </message>
    <message>
        <source>grams above 0</source>
        <translation>Gramm über 0</translation>
    </message>
    <message>
        <source>parts above 0</source>
        <translation>Teile über 0</translation>
    </message>
    <message>
        <source>one part or more</source>
        <translation>ein Teil oder mehr</translation>
    </message>
    <message>
        <source>minutes above 0</source>
        <translation>Minuten über 0</translation>
    </message>
    <message>
        <source>widths above 0 mm</source>
        <translation>Breiten über 0 mm</translation>
    </message>
    <message>
        <source>1 or 2 pairs of hands</source>
        <translation>1 oder 2 Paar Hände</translation>
    </message>
    <message>
        <source>this is a folder; %1 is needed</source>
        <translation>das ist ein Ordner; gebraucht wird %1</translation>
    </message>
    <message>
        <source>the file could not be written: %1; needed is %2</source>
        <translation>die Datei konnte nicht geschrieben werden: %1; gebraucht wird %2</translation>
    </message>
    <message>
        <source>the printer took no more</source>
        <translation>der Drucker nahm nichts mehr an</translation>
    </message>
    <message>
        <source>a printer that is on and has paper</source>
        <translation>ein Drucker, der eingeschaltet ist und Papier hat</translation>
    </message>
    <message>
        <source>this JSON is not a client: %1</source>
        <translation>dieses JSON ist keine Kundenakte: %1</translation>
    </message>
    <message>
        <source>%1, as its folder is named</source>
        <translation>%1, wie sein Ordner heißt</translation>
    </message>
    <message>
        <source>the disk does not answer</source>
        <translation>der Datenträger antwortet nicht</translation>
    </message>
    <message>
        <source>another program has this client open, or it cannot be read</source>
        <translation>ein anderes Programm hat diese Kundenakte offen, oder sie ist nicht lesbar</translation>
    </message>
    <message>
        <source>it is no file; right would be a photo as JPEG, PNG or WebP</source>
        <translation>es ist keine Datei; richtig wäre ein Foto als JPEG, PNG oder WebP</translation>
    </message>
    <message>
        <source>it is no picture of a known kind; right would be a photo as JPEG, PNG or WebP</source>
        <translation>es ist kein Bild einer bekannten Art; richtig wäre ein Foto als JPEG, PNG oder WebP</translation>
    </message>
    <message>
        <source>it does not say how large it is; right would be a photo as JPEG, PNG or WebP</source>
        <translation>es sagt nicht, wie groß es ist; richtig wäre ein Foto als JPEG, PNG oder WebP</translation>
    </message>
    <message>
        <source>it is damaged (%1); right would be a photo as JPEG, PNG or WebP</source>
        <translation>es ist beschädigt (%1); richtig wäre ein Foto als JPEG, PNG oder WebP</translation>
    </message>
    <message>
        <source>there is not enough memory for it</source>
        <translation>der Arbeitsspeicher reicht dafür nicht</translation>
    </message>
    <message>
        <source>parts by weight</source>
        <translation>Gewichtsteile</translation>
    </message>
    <message>
        <source>hydrogen peroxide: percent as labels have it, or volumes</source>
        <translation>Wasserstoffperoxid: Prozent, wie sie auf dem Etikett stehen, oder Volumen</translation>
    </message>
    <message>
        <source>how long a mixed bowl may be used</source>
        <translation>wie lange eine angemischte Schale verwendet werden darf</translation>
    </message>
    <message>
        <source>how long it may stay on the hair</source>
        <translation>wie lange es auf dem Haar bleiben darf</translation>
    </message>
    <message>
        <source>of the typed span</source>
        <translation>der eingetragenen Spanne</translation>
    </message>
    <message>
        <source>of the planned difference</source>
        <translation>des geplanten Unterschieds</translation>
    </message>
    <message>
        <source>of the places</source>
        <translation>der Stellen</translation>
    </message>
    <message>
        <source>of the time</source>
        <translation>der Zeit</translation>
    </message>
    <message>
        <source>of the product</source>
        <translation>des Produkts</translation>
    </message>
    <message>
        <source>g for 1 g of hair</source>
        <translation>g für 1 g Haar</translation>
    </message>
    <message>
        <source>Opening the cushion of a backcombed piece after the rinse.</source>
        <translation>Öffnen des Toupierpolsters einer Strähne nach dem Ausspülen.</translation>
    </message>
    <message>
        <source>Weighing and mixing a bowl.</source>
        <translation>Abwiegen und Anmischen einer Schale.</translation>
    </message>
    <message>
        <source>Looking at one piece: opening, wiping, closing.</source>
        <translation>Ansehen einer Strähne: öffnen, abwischen, schließen.</translation>
    </message>
    <message>
        <source>Time kept in reserve.</source>
        <translation>Zeit, die als Reserve bleibt.</translation>
    </message>
    <message>
        <source>Pieces this near to the front hairline count as fine hair and come last by rule.</source>
        <translation>Strähnen, die so nah an der vorderen Haarlinie liegen, gelten als feines Haar und kommen nach der Regel zuletzt.</translation>
    </message>
    <message>
        <source>Mixed product for the hair that it goes on.</source>
        <translation>Angemischtes Produkt für das Haar, auf das es kommt.</translation>
    </message>
    <message>
        <source>What stays in the bowl and on the brush, on top of what is used.</source>
        <translation>Was in der Schale und am Pinsel bleibt, zusätzlich zum Verbrauchten.</translation>
    </message>
    <message>
        <source>Density of hair; from memory of a handbook.</source>
        <translation>Dichte von Haar; aus dem Gedächtnis nach einem Handbuch.</translation>
    </message>
    <message>
        <source>levels</source>
        <translation>Tonhöhen</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>Wochen</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>of the hair</source>
        <translation>des Haars</translation>
    </message>
    <message>
        <source>the pages could not be painted</source>
        <translation>die Seiten ließen sich nicht zeichnen</translation>
    </message>
    <message>
        <source>the printed pages are not whole</source>
        <translation>die gedruckten Seiten sind nicht vollständig</translation>
    </message>
    <message>
        <source>a folder that you may write to, with room on its disk</source>
        <translation>ein Ordner, in den Sie schreiben dürfen, mit Platz auf dem Datenträger</translation>
    </message>
    <message>
        <source>%1; new are %2, as before are %3</source>
        <translation>%1; neu sind %2, wie vorher sind %3</translation>
    </message>
    <message>
        <source>a folder that lets go of these files; then write all pages again</source>
        <translation>ein Ordner, der diese Dateien freigibt; danach alle Seiten noch einmal schreiben</translation>
    </message>
    <message>
        <source>%1; all new pages stand, of the older ones stay %2</source>
        <translation>%1; alle neuen Seiten stehen, von den älteren bleiben %2</translation>
    </message>
    <message>
        <source>to remove the older ones by hand</source>
        <translation>die älteren von Hand zu entfernen</translation>
    </message>
    <message>
        <source>pages 1 to %1</source>
        <translation>Seiten 1 bis %1</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>der Datenträger ist voll</translation>
    </message>
    <message>
        <source>you may not do that there</source>
        <translation>dort ist Ihnen das nicht erlaubt</translation>
    </message>
    <message>
        <source>the disk can only be read</source>
        <translation>der Datenträger lässt sich nur lesen</translation>
    </message>
    <message>
        <source>there is no such folder</source>
        <translation>einen solchen Ordner gibt es nicht</translation>
    </message>
    <message>
        <source>the disk reports a fault</source>
        <translation>der Datenträger meldet einen Fehler</translation>
    </message>
    <message>
        <source>the file stands in its place, and the disk did not confirm it: %1</source>
        <translation>die Datei steht an ihrem Platz, und der Datenträger hat es nicht bestätigt: %1</translation>
    </message>
    <message>
        <source>photos are still being read</source>
        <translation>Fotos werden noch gelesen</translation>
    </message>
</context>
<context>
    <name>FindingsList</name>
    <message>
        <source>Wrong</source>
        <translation>Falsch</translation>
    </message>
    <message>
        <source>Check before work</source>
        <translation>Vor der Arbeit prüfen</translation>
    </message>
    <message>
        <source>Worth a look</source>
        <translation>Einen Blick wert</translation>
    </message>
</context>
<context>
    <name>HairWords</name>
    <message>
        <source>plum black</source>
        <translation>pflaumenschwarz</translation>
    </message>
    <message>
        <source>red violet</source>
        <translation>rotviolett</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rot</translation>
    </message>
    <message>
        <source>red orange</source>
        <translation>rotorange</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>orange</translation>
    </message>
    <message>
        <source>gold orange</source>
        <translation>goldorange</translation>
    </message>
    <message>
        <source>gold</source>
        <translation>gold</translation>
    </message>
    <message>
        <source>deep yellow</source>
        <translation>sattgelb</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>gelb</translation>
    </message>
    <message>
        <source>pale yellow</source>
        <translation>blassgelb</translation>
    </message>
    <message>
        <source>natural</source>
        <translation>natur</translation>
    </message>
    <message>
        <source>ash</source>
        <translation>asch</translation>
    </message>
    <message>
        <source>pearl</source>
        <translation>perl</translation>
    </message>
    <message>
        <source>beige</source>
        <translation>beige</translation>
    </message>
    <message>
        <source>copper</source>
        <translation>kupfer</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Vorn</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Oberkopf</translation>
    </message>
    <message>
        <source>Crown</source>
        <translation>Wirbelpartie</translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Hinterkopf</translation>
    </message>
    <message>
        <source>Nape</source>
        <translation>Nacken</translation>
    </message>
</context>
<context>
    <name>HairZones</name>
    <message>
        <source>Front</source>
        <translation>Vorn</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Oberkopf</translation>
    </message>
    <message>
        <source>Crown</source>
        <translation>Wirbelpartie</translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Hinterkopf</translation>
    </message>
    <message>
        <source>Nape</source>
        <translation>Nacken</translation>
    </message>
    <message>
        <source>Whole head</source>
        <translation>Ganzer Kopf</translation>
    </message>
</context>
<context>
    <name>Handout</name>
    <message>
        <source>worn down</source>
        <translation>offen getragen</translation>
    </message>
    <message>
        <source>worn half up</source>
        <translation>halb hochgesteckt</translation>
    </message>
    <message>
        <source>tied back</source>
        <translation>zurückgebunden</translation>
    </message>
    <message>
        <source>crown opened</source>
        <translation>Wirbelpartie geöffnet</translation>
    </message>
    <message>
        <source>in daylight</source>
        <translation>bei Tageslicht</translation>
    </message>
    <message>
        <source>under an overcast sky</source>
        <translation>bei bedecktem Himmel</translation>
    </message>
    <message>
        <source>under a warm lamp</source>
        <translation>unter einer warmen Lampe</translation>
    </message>
    <message>
        <source>in office light</source>
        <translation>bei Bürolicht</translation>
    </message>
    <message>
        <source>part moved by %1 mm</source>
        <translation>Scheitel um %1 mm verschoben</translation>
    </message>
    <message>
        <source>after %1 weeks</source>
        <translation>nach %1 Wochen</translation>
    </message>
    <message>
        <source>if it lifts less than planned</source>
        <translation>falls es weniger aufhellt als geplant</translation>
    </message>
    <message>
        <source>if it lifts more than planned</source>
        <translation>falls es mehr aufhellt als geplant</translation>
    </message>
    <message>
        <source>%1, as in the mirror</source>
        <translation>%1, wie im Spiegel</translation>
    </message>
    <message>
        <source>Shown: %1; %2.</source>
        <translation>Gezeigt: %1; %2.</translation>
    </message>
    <message>
        <source>Agreed</source>
        <translation>Vereinbart</translation>
    </message>
    <message>
        <source>What was agreed stands in the plan and cannot be read: %1</source>
        <translation>Was vereinbart wurde, steht im Plan und lässt sich nicht lesen: %1</translation>
    </message>
    <message>
        <source>Agreed on %1</source>
        <translation>Vereinbart am %1</translation>
    </message>
    <message>
        <source>No picture was kept.</source>
        <translation>Es wurde kein Bild aufbewahrt.</translation>
    </message>
    <message>
        <source>The agreed picture</source>
        <translation>Das vereinbarte Bild</translation>
    </message>
    <message>
        <source>Light and dark hair stay clearly apart.</source>
        <translation>Helles und dunkles Haar bleiben klar voneinander getrennt.</translation>
    </message>
    <message>
        <source>Light and dark hair can be told apart and run softly into each other.</source>
        <translation>Helles und dunkles Haar sind zu unterscheiden und laufen weich ineinander.</translation>
    </message>
    <message>
        <source>Light and dark hair blend into one tone.</source>
        <translation>Helles und dunkles Haar verschmelzen zu einem Ton.</translation>
    </message>
    <message>
        <source>Too little hair is seen to say.</source>
        <translation>Zu wenig Haar ist zu sehen, um es zu sagen.</translation>
    </message>
    <message>
        <source>Worn down, new growth begins to show after about %1 weeks; that may be from %2 to %3.</source>
        <translation>Offen getragen beginnt sich Nachwuchs nach etwa %1 Wochen zu zeigen; das kann von %2 bis %3 sein.</translation>
    </message>
    <message>
        <source>Not worked out.</source>
        <translation>Nicht berechnet.</translation>
    </message>
    <message>
        <source>What we planned</source>
        <translation>Was wir geplant haben</translation>
    </message>
    <message>
        <source>The picture has not been worked out.</source>
        <translation>Das Bild wurde nicht berechnet.</translation>
    </message>
    <message>
        <source>Nothing is planned yet: this is the hair as it is today.</source>
        <translation>Noch ist nichts geplant: Das ist das Haar, wie es heute ist.</translation>
    </message>
    <message>
        <source>As planned, worn down, in daylight. A mirror shows it the other way round.</source>
        <translation>Wie geplant, offen getragen, bei Tageslicht. Ein Spiegel zeigt es seitenverkehrt.</translation>
    </message>
    <message>
        <source>How light</source>
        <translation>Wie hell</translation>
    </message>
    <message>
        <source>How much difference</source>
        <translation>Wie viel Unterschied</translation>
    </message>
    <message>
        <source>Until new growth shows</source>
        <translation>Bis sich Nachwuchs zeigt</translation>
    </message>
    <message>
        <source>Looking after it</source>
        <translation>Pflege danach</translation>
    </message>
    <message>
        <source>Next visit</source>
        <translation>Nächster Besuch</translation>
    </message>
    <message>
        <source>Questions, or anything that worries you: call</source>
        <translation>Fragen oder etwas, das Sie beunruhigt: Rufen Sie an</translation>
    </message>
    <message>
        <source>Section %1</source>
        <translation>Abteilung %1</translation>
    </message>
    <message>
        <source>Title, aim and model</source>
        <translation>Titel, Ziel und Modell</translation>
    </message>
    <message>
        <source>Kit and formulas</source>
        <translation>Ausrüstung und Rezepturen</translation>
    </message>
    <message>
        <source>The views with their key</source>
        <translation>Die Ansichten mit ihrer Legende</translation>
    </message>
    <message>
        <source>Step by step</source>
        <translation>Schritt für Schritt</translation>
    </message>
    <message>
        <source>Sections and places, close</source>
        <translation>Abteilungen und Stellen, nah</translation>
    </message>
    <message>
        <source>Check points</source>
        <translation>Prüfpunkte</translation>
    </message>
    <message>
        <source>Time for placing</source>
        <translation>Zeit zum Auftragen</translation>
    </message>
    <message>
        <source>Faults and what to do</source>
        <translation>Fehler und was zu tun ist</translation>
    </message>
    <message>
        <source>How did it go?</source>
        <translation>Wie lief es?</translation>
    </message>
    <message>
        <source>Blank head sheet</source>
        <translation>Leeres Kopfblatt</translation>
    </message>
    <message>
        <source>Predict, then open</source>
        <translation>Vorhersagen, dann öffnen</translation>
    </message>
    <message>
        <source>Predict</source>
        <translation>Vorhersagen</translation>
    </message>
    <message>
        <source>Untitled plan</source>
        <translation>Plan ohne Titel</translation>
    </message>
    <message>
        <source>A picture of the plan, not a promise; a test strand shows how far this hair lightens.</source>
        <translation>Ein Bild des Plans, kein Versprechen; eine Probesträhne zeigt, wie weit dieses Haar aufhellt.</translation>
    </message>
    <message>
        <source>The maker&apos;s directions, local rules and licensed practice come first.</source>
        <translation>Die Angaben des Herstellers, örtliche Vorschriften und zugelassene Berufsausübung gehen vor.</translation>
    </message>
    <message>
        <source>Model&apos;s left</source>
        <translation>Links des Modells</translation>
    </message>
    <message>
        <source>Model&apos;s right</source>
        <translation>Rechts des Modells</translation>
    </message>
    <message>
        <source>Crown, close</source>
        <translation>Wirbelpartie, nah</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Formula %1</source>
        <translation>Rezeptur %1</translation>
    </message>
    <message>
        <source>Formula %1: %2</source>
        <translation>Rezeptur %1: %2</translation>
    </message>
    <message>
        <source>Figures come from the maker&apos;s directions and are written in by whoever read them.</source>
        <translation>Zahlen stammen aus den Angaben des Herstellers und werden von der Person eingetragen, die sie gelesen hat.</translation>
    </message>
    <message>
        <source>%1, %2 parts</source>
        <translation>%1, %2 Teile</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 vol</source>
        <translation>%1 Vol.</translation>
    </message>
    <message>
        <source>Products, parts by weight</source>
        <translation>Produkte, Gewichtsteile</translation>
    </message>
    <message>
        <source>Developer, strength, parts</source>
        <translation>Entwickler, Stärke, Teile</translation>
    </message>
    <message>
        <source>Also</source>
        <translation>Außerdem</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>A bowl may be used for</source>
        <translation>Eine Schale darf verwendet werden</translation>
    </message>
    <message>
        <source>Longest time on the hair</source>
        <translation>Längste Zeit auf dem Haar</translation>
    </message>
    <message>
        <source>Directions</source>
        <translation>Anwendung</translation>
    </message>
    <message>
        <source>Read in, on</source>
        <translation>Gelesen in, am</translation>
    </message>
    <message>
        <source>%1, on %2</source>
        <translation>%1, am %2</translation>
    </message>
    <message>
        <source>Leaflet: scalp contact yes.</source>
        <translation>Gebrauchsanweisung: Kontakt mit der Kopfhaut ja.</translation>
    </message>
    <message>
        <source>Leaflet: scalp contact no.</source>
        <translation>Gebrauchsanweisung: Kontakt mit der Kopfhaut nein.</translation>
    </message>
    <message>
        <source>Leaflet: scalp contact not stated; check it.</source>
        <translation>Gebrauchsanweisung: Kontakt mit der Kopfhaut nicht angegeben; prüfen.</translation>
    </message>
    <message>
        <source>Tail comb, sectioning clips, gloves, apron, timer, scales</source>
        <translation>Stielkamm, Abteilklammern, Handschuhe, Schürze, Timer, Waage</translation>
    </message>
    <message>
        <source>%1 foils and some to spare</source>
        <translation>%1 Folien und einige in Reserve</translation>
    </message>
    <message>
        <source>%1 foils, for pieces up to %2 wide, and some to spare</source>
        <translation>%1 Folien, für Strähnen bis %2 Breite, und einige in Reserve</translation>
    </message>
    <message>
        <source>Film</source>
        <translation>Klarsichtfolie</translation>
    </message>
    <message>
        <source>Comb for backcombing; a wet-hair brush to open it</source>
        <translation>Kamm zum Toupieren; eine Bürste für nasses Haar zum Öffnen</translation>
    </message>
    <message>
        <source>A brush for painting and a board</source>
        <translation>Ein Pinsel zum Malen und ein Brett</translation>
    </message>
    <message>
        <source>Brush and bowl</source>
        <translation>Pinsel und Schale</translation>
    </message>
    <message>
        <source>Before mixing: the maker&apos;s directions are read and at hand; skin test, test strand and elasticity are checked and written down.</source>
        <translation>Vor dem Anmischen: Die Angaben des Herstellers sind gelesen und liegen bereit; Hautverträglichkeitstest, Probesträhne und Elastizität sind geprüft und notiert.</translation>
    </message>
    <message>
        <source>Partings: clean, and where the drawing has them. Measure the first piece of each section against the scale.</source>
        <translation>Abteillinien: sauber und dort, wo die Zeichnung sie hat. Die erste Strähne jeder Abteilung am Maßstab messen.</translation>
    </message>
    <message>
        <source>Both sides: the same number of pieces at the same height.</source>
        <translation>Beide Seiten: gleich viele Strähnen auf gleicher Höhe.</translation>
    </message>
    <message>
        <source>Left-out hair: clipped away, dry, and as wide as it is drawn.</source>
        <translation>Ausgelassenes Haar: weggesteckt, trocken und so breit, wie es gezeichnet ist.</translation>
    </message>
    <message>
        <source>Brush work: the surface is covered evenly; look at the under side.</source>
        <translation>Pinselarbeit: Die Oberfläche ist gleichmäßig bedeckt; die Unterseite ansehen.</translation>
    </message>
    <message>
        <source>Before rinsing: each piece has been looked at, and what was seen is written down.</source>
        <translation>Vor dem Ausspülen: Jede Strähne wurde angesehen, und was zu sehen war, ist notiert.</translation>
    </message>
    <message>
        <source>Dry, in daylight: part moved, crown opened, tied back. Look for a block, a hole or a stripe.</source>
        <translation>Trocken, bei Tageslicht: Scheitel verschoben, Wirbelpartie geöffnet, zurückgebunden. Nach Block, Loch oder Streifen sehen.</translation>
    </message>
    <message>
        <source>A dark hole at the crown: The last piece lies too far from the opening. Next time begin there and count backward.</source>
        <translation>Ein dunkles Loch an der Wirbelpartie: Die letzte Strähne liegt zu weit von der Öffnung. Nächstes Mal dort anfangen und rückwärts zählen.</translation>
    </message>
    <message>
        <source>The sides differ: Partings drifted. Compare the number and the height of the pieces before anything is mixed.</source>
        <translation>Die Seiten sind verschieden: Abteillinien sind gewandert. Zahl und Höhe der Strähnen vergleichen, bevor etwas angemischt wird.</translation>
    </message>
    <message>
        <source>The weave reads as a line: The teeth stand too close. Keep the gaps as wide as drawn.</source>
        <translation>Das Gewebte wirkt wie eine Linie: Die Zähne stehen zu dicht. Die Lücken so breit halten wie gezeichnet.</translation>
    </message>
    <message>
        <source>It is less light than wanted: Do not lighten it again today. Write down what is seen; a strand test before another visit shows how this hair lightens.</source>
        <translation>Es ist weniger hell als gewünscht: Heute nicht noch einmal aufhellen. Notieren, was zu sehen ist; eine Probesträhne vor einem weiteren Besuch zeigt, wie dieses Haar aufhellt.</translation>
    </message>
    <message>
        <source>Hair stretches and does not spring back, or breaks: Rinse the product off and stop lightening; the maker&apos;s directions and whoever teaches say what follows.</source>
        <translation>Haar dehnt sich und federt nicht zurück, oder es bricht: Das Produkt ausspülen und das Aufhellen beenden; was folgt, sagen die Angaben des Herstellers und wer unterrichtet.</translation>
    </message>
    <message>
        <source>Pain, burning or swelling: Rinse the product off at once with plenty of lukewarm water, unless the maker&apos;s first aid says otherwise, and get medical help. In the eye: rinse with water at once, then medical help. Trouble breathing or a swelling face: the emergency number.</source>
        <translation>Schmerz, Brennen oder Schwellung: Das Produkt sofort mit viel lauwarmem Wasser ausspülen, wenn die Erste-Hilfe-Hinweise des Herstellers nichts anderes sagen, und ärztliche Hilfe holen. Im Auge: sofort mit Wasser ausspülen, dann ärztliche Hilfe. Atemnot oder Schwellung im Gesicht: den Notruf wählen.</translation>
    </message>
    <message>
        <source>My partings were clean and stood where the drawing has them.</source>
        <translation>Meine Abteillinien waren sauber und lagen, wo die Zeichnung sie hat.</translation>
    </message>
    <message>
        <source>My pieces had the thickness that is drawn.</source>
        <translation>Meine Strähnen hatten die gezeichnete Dicke.</translation>
    </message>
    <message>
        <source>I left out what is drawn as left out.</source>
        <translation>Ich habe ausgelassen, was als ausgelassen gezeichnet ist.</translation>
    </message>
    <message>
        <source>My backcombing was even, and I opened it without breakage.</source>
        <translation>Mein Toupieren war gleichmäßig, und ich habe es ohne Haarbruch geöffnet.</translation>
    </message>
    <message>
        <source>My start was even, and nothing bled toward the root.</source>
        <translation>Mein Beginn war gleichmäßig, und nichts lief zum Ansatz.</translation>
    </message>
    <message>
        <source>Both sides matched.</source>
        <translation>Beide Seiten passten zueinander.</translation>
    </message>
    <message>
        <source>I looked at the pieces in time and wrote down what I saw.</source>
        <translation>Ich habe die Strähnen rechtzeitig angesehen und notiert, was ich sah.</translation>
    </message>
    <message>
        <source>With the crown opened and the part moved there is no block and no hole.</source>
        <translation>Mit geöffneter Wirbelpartie und verschobenem Scheitel gibt es keinen Block und kein Loch.</translation>
    </message>
    <message>
        <source>I can say why each section is placed as it is.</source>
        <translation>Ich kann sagen, warum jede Abteilung so platziert ist.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>no pieces yet</source>
        <translation>noch keine Strähnen</translation>
    </message>
    <message>
        <source>one piece</source>
        <translation>eine Strähne</translation>
    </message>
    <message>
        <source>%1 pieces</source>
        <translation>%1 Strähnen</translation>
    </message>
    <message>
        <source>Choice %1, %2</source>
        <translation>Variante %1, %2</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Aim</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>The model</source>
        <translation>Das Modell</translation>
    </message>
    <message>
        <source>Before you begin</source>
        <translation>Bevor Sie anfangen</translation>
    </message>
    <message>
        <source>Ask the age, past reactions and what the hair has been through: henna, metallic or box colour, lightening; look at the scalp; check which tests are due. In doubt do not go on; refer to a doctor. Wear gloves, see to fresh air, and work to the maker&apos;s directions. Added heat only as the leaflet says.</source>
        <translation>Nach Alter, früheren Reaktionen und danach fragen, was das Haar hinter sich hat: Henna, metallhaltige oder Farbe aus der Packung, Blondierung; die Kopfhaut ansehen; prüfen, welche Tests fällig sind. Im Zweifel nicht weitermachen; ärztlich abklären lassen. Handschuhe tragen, für frische Luft sorgen und nach den Angaben des Herstellers arbeiten. Zusätzliche Wärme nur, wie es die Gebrauchsanweisung sagt.</translation>
    </message>
    <message>
        <source>Pain, burning or swelling: rinse the product off at once with plenty of lukewarm water, unless the maker&apos;s first aid says otherwise, and get medical help. In the eye: rinse with water at once, then medical help. Trouble breathing or a swelling face: the emergency number.</source>
        <translation>Schmerz, Brennen oder Schwellung: das Produkt sofort mit viel lauwarmem Wasser ausspülen, wenn die Erste-Hilfe-Hinweise des Herstellers nichts anderes sagen, und ärztliche Hilfe holen. Im Auge: sofort mit Wasser ausspülen, dann ärztliche Hilfe. Atemnot oder Schwellung im Gesicht: den Notruf wählen.</translation>
    </message>
    <message>
        <source>There are no pieces in this choice yet: the head is bare.</source>
        <translation>In dieser Variante gibt es noch keine Strähnen: Der Kopf ist leer.</translation>
    </message>
    <message>
        <source>There are no pieces in this choice yet.</source>
        <translation>In dieser Variante gibt es noch keine Strähnen.</translation>
    </message>
    <message>
        <source>Each place is seen squarely. The scale holds in its middle; toward the rim the head curves away and the drawing gets shorter. Print at 100 %: the line below is then as long as it says. Measure it.</source>
        <translation>Jede Stelle ist gerade von vorn zu sehen. Der Maßstab gilt in ihrer Mitte; zum Rand hin krümmt sich der Kopf weg, und die Zeichnung wird kürzer. Mit 100 % drucken: Die Linie unten ist dann so lang, wie sie sagt. Messen Sie nach.</translation>
    </message>
    <message>
        <source>as large as on the head (1:1)</source>
        <translation>so groß wie am Kopf (1:1)</translation>
    </message>
    <message>
        <source>half as large as on the head (1:2)</source>
        <translation>halb so groß wie am Kopf (1:2)</translation>
    </message>
    <message>
        <source>a quarter as large as on the head (1:4)</source>
        <translation>ein Viertel so groß wie am Kopf (1:4)</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The same on the other side, mirrored.</source>
        <translation>Dasselbe auf der anderen Seite, gespiegelt.</translation>
    </message>
    <message>
        <source>What you see</source>
        <translation>Was zu sehen ist</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>partly</source>
        <translation>teilweise</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>What I would do differently</source>
        <translation>Was ich anders machen würde</translation>
    </message>
    <message>
        <source>Looked at by</source>
        <translation>Angesehen von</translation>
    </message>
    <message>
        <source>Name, date, what is tried</source>
        <translation>Name, Datum, was ausprobiert wird</translation>
    </message>
    <message>
        <source>The pieces are placed as drawn. Before you turn the page: shade on the bare heads how light you expect the hair to be, and write down what you expect.</source>
        <translation>Die Strähnen liegen, wie gezeichnet. Bevor Sie umblättern: Schraffieren Sie auf den leeren Köpfen, wie hell Sie das Haar erwarten, und schreiben Sie auf, was Sie erwarten.</translation>
    </message>
    <message>
        <source>How light will it look, as a level, worn down?</source>
        <translation>Wie hell wird es offen getragen wirken, als Tonhöhe?</translation>
    </message>
    <message>
        <source>What will be seen when the crown is opened?</source>
        <translation>Was ist zu sehen, wenn die Wirbelpartie geöffnet wird?</translation>
    </message>
    <message>
        <source>Where will it look lightest, where darkest, and why?</source>
        <translation>Wo wirkt es am hellsten, wo am dunkelsten, und warum?</translation>
    </message>
    <message>
        <source>Now open it</source>
        <translation>Jetzt öffnen</translation>
    </message>
    <message>
        <source>There are no pieces in this choice yet, so there is nothing to open.</source>
        <translation>In dieser Variante gibt es noch keine Strähnen, also nichts zu öffnen.</translation>
    </message>
    <message>
        <source>The look has not been worked out.</source>
        <translation>Der Look wurde nicht berechnet.</translation>
    </message>
    <message>
        <source>Above: worn down, in daylight. Below: the crown opened by hand.</source>
        <translation>Oben: offen getragen, bei Tageslicht. Unten: die Wirbelpartie von Hand geöffnet.</translation>
    </message>
    <message>
        <source>Worn down, all hair that is seen: %1. %2</source>
        <translation>Offen getragen, alles sichtbare Haar: %1. %2</translation>
    </message>
    <message>
        <source>What was different from what I expected?</source>
        <translation>Was war anders, als ich es erwartet habe?</translation>
    </message>
    <message>
        <source>Level at the root</source>
        <translation>Tonhöhe am Ansatz</translation>
    </message>
    <message>
        <source>Level, middle and ends</source>
        <translation>Tonhöhe, Mitte und Spitzen</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Falls</source>
        <translation>Fällt</translation>
    </message>
    <message>
        <source>How much hair</source>
        <translation>Wie viel Haar</translation>
    </message>
    <message>
        <source>%1 on a cm²</source>
        <translation>%1 je cm²</translation>
    </message>
    <message>
        <source>How thick a hair</source>
        <translation>Wie dick ein Haar</translation>
    </message>
    <message>
        <source>%1 µm</source>
        <translation>%1 µm</translation>
    </message>
    <message>
        <source>White hair</source>
        <translation>Weißes Haar</translation>
    </message>
    <message>
        <source>Swirls at the crown</source>
        <translation>Wirbel am Oberkopf</translation>
    </message>
    <message>
        <source>Usual part</source>
        <translation>Üblicher Scheitel</translation>
    </message>
    <message>
        <source>none, combed back</source>
        <translation>keiner, zurückgekämmt</translation>
    </message>
    <message>
        <source>as drawn</source>
        <translation>wie gezeichnet</translation>
    </message>
    <message>
        <source>Old colour bands</source>
        <translation>Alte Farbbänder</translation>
    </message>
    <message>
        <source>Already light, scattered</source>
        <translation>Schon hell, verstreut</translation>
    </message>
    <message>
        <source>yes: test a strand of it</source>
        <translation>ja: eine Strähne davon testen</translation>
    </message>
    <message>
        <source>Condition checked on</source>
        <translation>Zustand geprüft am</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Legende</translation>
    </message>
    <message>
        <source>Take one piece to deepen</source>
        <translation>Eine Strähne zum Abdunkeln nehmen</translation>
    </message>
    <message>
        <source>Take %1 pieces to deepen</source>
        <translation>%1 Strähnen zum Abdunkeln nehmen</translation>
    </message>
    <message>
        <source>Take one slice</source>
        <translation>Einen Slice nehmen</translation>
    </message>
    <message>
        <source>Take %1 slices</source>
        <translation>%1 Slices nehmen</translation>
    </message>
    <message>
        <source>Take one weave</source>
        <translation>Eine gewebte Strähne nehmen</translation>
    </message>
    <message>
        <source>Take %1 weaves</source>
        <translation>%1 gewebte Strähnen nehmen</translation>
    </message>
    <message>
        <source>Take one piece to paint</source>
        <translation>Eine Strähne zum Malen nehmen</translation>
    </message>
    <message>
        <source>Take %1 pieces to paint</source>
        <translation>%1 Strähnen zum Malen nehmen</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>%1 to %2 mm</source>
        <translation>%1 bis %2 mm</translation>
    </message>
    <message>
        <source>straight</source>
        <translation>glatt</translation>
    </message>
    <message>
        <source>loose wave</source>
        <translation>leichte Welle</translation>
    </message>
    <message>
        <source>wave</source>
        <translation>Welle</translation>
    </message>
    <message>
        <source>loose curl</source>
        <translation>lockere Locke</translation>
    </message>
    <message>
        <source>curl</source>
        <translation>Locke</translation>
    </message>
    <message>
        <source>tight curl</source>
        <translation>enge Locke</translation>
    </message>
    <message>
        <source>coil</source>
        <translation>Kraushaar</translation>
    </message>
    <message>
        <source>tight coil</source>
        <translation>enges Kraushaar</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>slice</source>
        <translation>Slice</translation>
    </message>
    <message>
        <source>weave</source>
        <translation>gewebt</translation>
    </message>
    <message>
        <source>painted</source>
        <translation>gemalt</translation>
    </message>
    <message>
        <source>%1, deepened</source>
        <translation>%1, abgedunkelt</translation>
    </message>
    <message>
        <source>foil</source>
        <translation>Folie</translation>
    </message>
    <message>
        <source>film</source>
        <translation>Klarsichtfolie</translation>
    </message>
    <message>
        <source>open air</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>lifts to %1 (%2 to %3)</source>
        <translation>hellt auf zu %1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>lifts to %1</source>
        <translation>hellt auf zu %1</translation>
    </message>
    <message>
        <source>finishes at %1 %2</source>
        <translation>endet bei %1 %2</translation>
    </message>
    <message>
        <source>%1 in %2, %3 thick</source>
        <translation>%1 in %2, %3 dick</translation>
    </message>
    <message>
        <source>%1 (%2), %3 thick</source>
        <translation>%1 (%2), %3 dick</translation>
    </message>
    <message>
        <source>%1, %2 thick</source>
        <translation>%1, %2 dick</translation>
    </message>
    <message>
        <source>Leave out %1 between them.</source>
        <translation>Dazwischen %1 auslassen.</translation>
    </message>
    <message>
        <source>Weave teeth of %1 with gaps of %2.</source>
        <translation>Zähne von %1 mit Lücken von %2 weben.</translation>
    </message>
    <message>
        <source>Take %1 % of the hair.</source>
        <translation>%1 % des Haars nehmen.</translation>
    </message>
    <message>
        <source>Between the ticks hair stays out: that stretch is not taken.</source>
        <translation>Zwischen den Strichen bleibt Haar draußen: Dieses Stück wird nicht genommen.</translation>
    </message>
    <message>
        <source>Clip one piece away: it is left out.</source>
        <translation>Eine Strähne wegstecken: Sie ist ausgelassen.</translation>
    </message>
    <message>
        <source>Clip %1 pieces away: they are left out.</source>
        <translation>%1 Strähnen wegstecken: Sie sind ausgelassen.</translation>
    </message>
    <message>
        <source>Clip one piece away (%1): it is left out.</source>
        <translation>Eine Strähne wegstecken (%1): Sie ist ausgelassen.</translation>
    </message>
    <message>
        <source>Clip %1 pieces away (%2): they are left out.</source>
        <translation>%1 Strähnen wegstecken (%2): Sie sind ausgelassen.</translation>
    </message>
    <message>
        <source>%1 to %2 %</source>
        <translation>%1 bis %2 %</translation>
    </message>
    <message>
        <source>Backcomb: push back %1 of the hair, backcomb depth %2.</source>
        <translation>Toupieren: %1 des Haars zurückschieben, Toupiertiefe %2.</translation>
    </message>
    <message>
        <source>Start at the scalp, if the leaflet allows contact with it.</source>
        <translation>An der Kopfhaut beginnen, wenn die Gebrauchsanweisung Kontakt mit ihr erlaubt.</translation>
    </message>
    <message>
        <source>Start %1 off the scalp.</source>
        <translation>%1 über der Kopfhaut beginnen.</translation>
    </message>
    <message>
        <source>Paint the under side too.</source>
        <translation>Auch die Unterseite bestreichen.</translation>
    </message>
    <message>
        <source>Leave the under side bare.</source>
        <translation>Die Unterseite unbestrichen lassen.</translation>
    </message>
    <message>
        <source>Stop %1 off the scalp.</source>
        <translation>%1 über der Kopfhaut aufhören.</translation>
    </message>
    <message>
        <source>Keep in: %1.</source>
        <translation>Einlegen in: %1.</translation>
    </message>
    <message>
        <source>Keep in: %1; pieces that share one are listed on the record card.</source>
        <translation>Einlegen in: %1; Strähnen, die sich eine teilen, stehen auf der Karteikarte.</translation>
    </message>
    <message>
        <source>Formula %1.</source>
        <translation>Rezeptur %1.</translation>
    </message>
    <message>
        <source>Wanted: %1.</source>
        <translation>Gewünscht: %1.</translation>
    </message>
    <message>
        <source>formula %1</source>
        <translation>Rezeptur %1</translation>
    </message>
    <message>
        <source>From %1 on: %2.</source>
        <translation>Ab %1: %2.</translation>
    </message>
    <message>
        <source>Pushed hairs begin lower, each at its own height, so that the root stays soft.</source>
        <translation>Zurückgeschobenes Haar beginnt tiefer, jedes auf eigener Höhe, damit der Ansatz weich bleibt.</translation>
    </message>
    <message>
        <source>Light from the scalp is the brightest; its regrowth is seen soonest.</source>
        <translation>Helles ab der Kopfhaut ist am hellsten; sein Nachwuchs ist am frühesten zu sehen.</translation>
    </message>
    <message>
        <source>Dark hair between the teeth keeps the light from reading as a stripe.</source>
        <translation>Dunkles Haar zwischen den Zähnen hält das Helle davon ab, als Streifen zu wirken.</translation>
    </message>
    <message>
        <source>The bare under side keeps depth beneath the light.</source>
        <translation>Die unbestrichene Unterseite erhält Tiefe unter dem Hellen.</translation>
    </message>
    <message>
        <source>The thin last piece lies beside the opening, so that no solid patch shows where the hair opens.</source>
        <translation>Die dünne letzte Strähne liegt neben der Öffnung, damit sich keine geschlossene Fläche zeigt, wo das Haar auseinanderfällt.</translation>
    </message>
    <message>
        <source>The pieces grow toward the top, where most light is seen.</source>
        <translation>Die Strähnen werden nach oben dicker, wo das meiste Helle zu sehen ist.</translation>
    </message>
    <message>
        <source>The pieces get thinner toward the top, where the hair opens.</source>
        <translation>Die Strähnen werden nach oben dünner, wo das Haar auseinanderfällt.</translation>
    </message>
    <message>
        <source>Staggered pieces, so that their ends do not line up when the hair opens.</source>
        <translation>Versetzte Strähnen, damit ihre Enden nicht in einer Linie liegen, wenn das Haar auseinanderfällt.</translation>
    </message>
    <message>
        <source>The stretch that stays out breaks the row, so that no band runs through.</source>
        <translation>Das Stück, das draußen bleibt, unterbricht die Passée, damit kein Band durchläuft.</translation>
    </message>
    <message>
        <source>Light that starts off the scalp leaves the root dark, so that new growth shows later.</source>
        <translation>Helles, das über der Kopfhaut beginnt, lässt den Ansatz dunkel, damit sich Nachwuchs später zeigt.</translation>
    </message>
    <message>
        <source>teeth %1, gaps %2 mm</source>
        <translation>Zähne %1, Lücken %2 mm</translation>
    </message>
    <message>
        <source>%1 taken</source>
        <translation>%1 genommen</translation>
    </message>
    <message>
        <source>under side painted</source>
        <translation>Unterseite bestrichen</translation>
    </message>
    <message>
        <source>under side bare</source>
        <translation>Unterseite unbestrichen</translation>
    </message>
    <message>
        <source>%1 of the thickness</source>
        <translation>%1 der Dicke</translation>
    </message>
    <message>
        <source>out from %1 to %2 mm</source>
        <translation>draußen von %1 bis %2 mm</translation>
    </message>
    <message>
        <source>from %1 mm: %2</source>
        <translation>ab %1 mm: %2</translation>
    </message>
    <message>
        <source>%1 mm long</source>
        <translation>%1 mm lang</translation>
    </message>
    <message>
        <source> to %1</source>
        <translation> bis %1</translation>
    </message>
    <message>
        <source>Pieces in order</source>
        <translation>Strähnen in ihrer Reihenfolge</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Taken as</source>
        <translation>Genommen als</translation>
    </message>
    <message>
        <source>Formula and wanted colour</source>
        <translation>Rezeptur und gewünschte Farbe</translation>
    </message>
    <message>
        <source>Kept in</source>
        <translation>Liegt in</translation>
    </message>
    <message>
        <source>thickness %1</source>
        <translation>Dicke %1</translation>
    </message>
    <message>
        <source>left out %1</source>
        <translation>ausgelassen %1</translation>
    </message>
    <message>
        <source>start %1</source>
        <translation>Beginn %1</translation>
    </message>
    <message>
        <source>backcomb depth %1, pushed back %2 to %3</source>
        <translation>Toupiertiefe %1, zurückgeschoben %2 bis %3</translation>
    </message>
    <message>
        <source>foil %1</source>
        <translation>Folie %1</translation>
    </message>
    <message>
        <source>staggered</source>
        <translation>versetzt</translation>
    </message>
    <message>
        <source>zigzag %1</source>
        <translation>Zickzack %1</translation>
    </message>
    <message>
        <source>last piece %1 thick</source>
        <translation>letzte Strähne %1 dick</translation>
    </message>
    <message>
        <source>drawn by hand</source>
        <translation>von Hand gezeichnet</translation>
    </message>
    <message>
        <source>follows the other side</source>
        <translation>folgt der anderen Seite</translation>
    </message>
    <message>
        <source>Sections and their rules</source>
        <translation>Abteilungen und ihre Regeln</translation>
    </message>
    <message>
        <source>to %1 mm, blended over %2 mm</source>
        <translation>bis %1 mm, Übergang über %2 mm</translation>
    </message>
    <message>
        <source>whole head</source>
        <translation>ganzer Kopf</translation>
    </message>
    <message>
        <source>level %1 %2</source>
        <translation>Tonhöhe %1 %2</translation>
    </message>
    <message>
        <source>Root shadow</source>
        <translation>Ansatzschatten</translation>
    </message>
    <message>
        <source>Glaze</source>
        <translation>Glanztönung</translation>
    </message>
    <message>
        <source>Over all of it</source>
        <translation>Über allem</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>poor</source>
        <translation>schlecht</translation>
    </message>
    <message>
        <source>not checked</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>resistant</source>
        <translation>widerstandsfähig</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>üblich</translation>
    </message>
    <message>
        <source>porous</source>
        <translation>porös</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>Length, mm</source>
        <translation>Länge, mm</translation>
    </message>
    <message>
        <source>Level: root, middle, ends</source>
        <translation>Tonhöhe: Ansatz, Mitte, Spitzen</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Porosity</source>
        <translation>Porosität</translation>
    </message>
    <message>
        <source>Old colour band: %1, from %2 to %3 mm, level %4.</source>
        <translation>Altes Farbband: %1, von %2 bis %3 mm, Tonhöhe %4.</translation>
    </message>
    <message>
        <source>Already light: %1 of the hair, %2, from %3 to %4 mm, level %5.</source>
        <translation>Schon hell: %1 des Haars, %2, von %3 bis %4 mm, Tonhöhe %5.</translation>
    </message>
    <message>
        <source>Record card</source>
        <translation>Karteikarte</translation>
    </message>
    <message>
        <source>Client</source>
        <translation>Kundenname</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Plan number %1. The plan holds no name; the client&apos;s folder does.</source>
        <translation>Plannummer %1. Der Plan enthält keinen Namen; die Kundenakte schon.</translation>
    </message>
    <message>
        <source>As planned, worn down, in daylight</source>
        <translation>Wie geplant, offen getragen, bei Tageslicht</translation>
    </message>
    <message>
        <source>All hair that is seen: %1. %2</source>
        <translation>Alles sichtbare Haar: %1. %2</translation>
    </message>
    <message>
        <source>Head and hair</source>
        <translation>Kopf und Haar</translation>
    </message>
    <message>
        <source>Formulas</source>
        <translation>Rezepturen</translation>
    </message>
    <message>
        <source>Assumptions that were changed</source>
        <translation>Annahmen, die geändert wurden</translation>
    </message>
    <message>
        <source>None: every value is the program&apos;s own.</source>
        <translation>Keine: Jeder Wert ist der des Programms.</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Level seen before rinsing, by section</source>
        <translation>Vor dem Ausspülen gesehene Tonhöhe, je Abteilung</translation>
    </message>
    <message>
        <source>After toner, dry, in daylight</source>
        <translation>Nach dem Toner, trocken, bei Tageslicht</translation>
    </message>
    <message>
        <source>Next time differently</source>
        <translation>Nächstes Mal anders</translation>
    </message>
    <message>
        <source>This piece or section is no longer in the plan. Its words are kept; take the step out or draw it again.</source>
        <translation>Diese Strähne oder Abteilung ist nicht mehr im Plan. Ihre Texte sind aufbewahrt; den Schritt herausnehmen oder sie neu zeichnen.</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>There are no pieces in this choice yet, so there are no steps. Draw pieces or lay out a section first.</source>
        <translation>In dieser Variante gibt es noch keine Strähnen, also keine Schritte. Zuerst Strähnen zeichnen oder eine Abteilung auslegen.</translation>
    </message>
    <message>
        <source>Pieces %1</source>
        <translation>Strähnen %1</translation>
    </message>
    <message>
        <source>There is nothing to place yet.</source>
        <translation>Es gibt noch nichts aufzutragen.</translation>
    </message>
    <message>
        <source>The figures in the bars are the steps; below them minutes from the first parting.</source>
        <translation>Die Ziffern in den Balken sind die Schritte; darunter Minuten ab der ersten Abteillinie.</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Placing</source>
        <translation>Auftragen</translation>
    </message>
    <message>
        <source>First in at</source>
        <translation>Erste drin um</translation>
    </message>
    <message>
        <source>Looked at</source>
        <translation>Angesehen um</translation>
    </message>
    <message>
        <source>Rinsed at</source>
        <translation>Ausgespült um</translation>
    </message>
    <message>
        <source>No longer in the plan: %1</source>
        <translation>Nicht mehr im Plan: %1</translation>
    </message>
    <message>
        <source>Hairline</source>
        <translation>Haarlinie</translation>
    </message>
    <message>
        <source>%1 mm on paper</source>
        <translation>%1 mm auf Papier</translation>
    </message>
    <message>
        <source>Minutes for placing, by step</source>
        <translation>Minuten zum Auftragen, je Schritt</translation>
    </message>
    <message>
        <source>%1, %2 min</source>
        <translation>%1, %2 min</translation>
    </message>
    <message>
        <source>Work list</source>
        <translation>Arbeitsliste</translation>
    </message>
    <message>
        <source>Bowl by bowl</source>
        <translation>Schale für Schale</translation>
    </message>
    <message>
        <source>Bowl</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>At, min</source>
        <translation>Bei, min</translation>
    </message>
    <message>
        <source>Grams</source>
        <translation>Gramm</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Strähnen</translation>
    </message>
    <message>
        <source>From, min</source>
        <translation>Ab, min</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Hände</translation>
    </message>
    <message>
        <source>Foil</source>
        <translation>Folie</translation>
    </message>
    <message>
        <source>Level seen</source>
        <translation>Gesehene Tonhöhe</translation>
    </message>
    <message>
        <source>Foils and hair</source>
        <translation>Folien und Haar</translation>
    </message>
    <message>
        <source>%1 foils of %2 mm</source>
        <translation>%1 Folien von %2 mm</translation>
    </message>
    <message>
        <source>%1 foils</source>
        <translation>%1 Folien</translation>
    </message>
    <message>
        <source>%1 foils that no width of yours is wide enough for</source>
        <translation>%1 Folien, für die keine Ihrer Breiten breit genug ist</translation>
    </message>
    <message>
        <source>%1 films</source>
        <translation>%1 Klarsichtfolien</translation>
    </message>
    <message>
        <source>%1 pieces in open air</source>
        <translation>%1 Strähnen offen an der Luft</translation>
    </message>
    <message>
        <source>%1 g of hair taken</source>
        <translation>%1 g Haar genommen</translation>
    </message>
    <message>
        <source>The head&apos;s measures do not fit together, so that there is no work list: %1</source>
        <translation>Die Maße des Kopfs passen nicht zusammen, darum gibt es keine Arbeitsliste: %1</translation>
    </message>
    <message>
        <source>No piece is lightened or deepened in this choice yet.</source>
        <translation>In dieser Variante wird noch keine Strähne aufgehellt oder abgedunkelt.</translation>
    </message>
    <message>
        <source>%1 pieces; the last is in after %2 min, work in all %3 min and %4 min in reserve, by the assumptions or, where ticked, your own factors. How long the product stays on the hair is not in it: that is seen, not planned.</source>
        <translation>%1 Strähnen; die letzte sitzt nach %2 min, Arbeit insgesamt %3 min und %4 min Reserve, nach den Annahmen oder, wo angehakt, Ihren eigenen Faktoren. Wie lange das Produkt im Haar bleibt, steht nicht darin: das wird gesehen, nicht geplant.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>Min</source>
        <translation>Min</translation>
    </message>
    <message>
        <source>Pigment left</source>
        <translation>Restpigment</translation>
    </message>
    <message>
        <source>1 tap was taken back and is not listed.</source>
        <translation>1 Eintrag wurde zurückgenommen und steht nicht hier.</translation>
    </message>
    <message>
        <source>%1 taps were taken back and are not listed.</source>
        <translation>%1 Einträge wurden zurückgenommen und stehen nicht hier.</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>inside %1 to %2</source>
        <translation>innerhalb %1 bis %2</translation>
    </message>
    <message>
        <source>outside %1 to %2</source>
        <translation>außerhalb %1 bis %2</translation>
    </message>
    <message>
        <source>Planned and got</source>
        <translation>Geplant und erreicht</translation>
    </message>
    <message>
        <source>Levels as last seen after the rinse, beside what each piece was to lift to.</source>
        <translation>Tonhöhen, wie nach dem Ausspülen zuletzt gesehen, neben dem, worauf jede Strähne aufhellen sollte.</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Strähne</translation>
    </message>
    <message>
        <source>Planned level</source>
        <translation>Geplante Tonhöhe</translation>
    </message>
    <message>
        <source>Level that came</source>
        <translation>Erreichte Tonhöhe</translation>
    </message>
    <message>
        <source>Typed span</source>
        <translation>Eingetragene Spanne</translation>
    </message>
    <message>
        <source>The appointment, tap by tap</source>
        <translation>Der Termin, Eintrag für Eintrag</translation>
    </message>
    <message>
        <source>The appointment log stands in the plan and cannot be read: %1</source>
        <translation>Das Protokoll des Termins steht im Plan und lässt sich nicht lesen: %1</translation>
    </message>
    <message>
        <source>As it was tapped, by this computer&apos;s clock; minutes count from the first tap of the visit. How long product was on the hair is what happened on this hair, not how long it may stay.</source>
        <translation>Wie eingetragen, nach der Uhr dieses Rechners; Minuten zählen vom ersten Eintrag des Besuchs. Wie lange Produkt auf dem Haar war, galt für dieses Haar; es sagt nicht, wie lange es bleiben darf.</translation>
    </message>
    <message>
        <source>Visit of %1</source>
        <translation>Besuch vom %1</translation>
    </message>
    <message>
        <source>Look at the first pieces while you place, as often as the directions and the hair ask; when the last one is in, at all of them. Open, wipe, look; product on the hair makes it look lighter than it is.</source>
        <translation>Die ersten Strähnen ansehen, während aufgetragen wird, so oft es die Angaben und das Haar verlangen; wenn die letzte aufgetragen ist, alle. Öffnen, abwischen, ansehen; mit Produkt darauf wirkt Haar heller, als es ist.</translation>
    </message>
    <message>
        <source>Dark hair beside the light is what light stands out against.</source>
        <translation>Dunkles Haar neben dem hellen ist das, wovon sich Helles abhebt.</translation>
    </message>
    <message>
        <source>Depth beside the light is what light stands out against.</source>
        <translation>Tiefe neben dem Hellen ist das, wovon sich Helles abhebt.</translation>
    </message>
    <message>
        <source>About %1 minutes for placing by the plan&apos;s assumptions, where your own speed can be typed. Time on the hair is not planned here: it is what the leaflet says and what you see.</source>
        <translation>Etwa %1 Minuten Auftragen nach den Annahmen des Plans, wo sich das eigene Tempo eintragen lässt. Die Zeit auf dem Haar wird hier nicht geplant: sie ist, was die Gebrauchsanweisung sagt und was Sie sehen.</translation>
    </message>
    <message>
        <source>Distances are mm, whole ones from 10 mm on and for the steps of a section&apos;s rule; start, stop and backcomb depth are measured along the stretched hair.</source>
        <translation>Abstände sind mm, ganze ab 10 mm und bei den Stufen einer Abteilungsregel; Beginn, Ende und Toupiertiefe sind am gestreckten Haar gemessen.</translation>
    </message>
    <message>
        <source>A row of several pieces holds for each of them.</source>
        <translation>Eine Zeile mit mehreren Strähnen gilt für jede von ihnen.</translation>
    </message>
    <message>
        <source>%1, blend %2</source>
        <translation>%1, Übergang %2</translation>
    </message>
    <message>
        <source>%1, %2, blend %3</source>
        <translation>%1, %2, Übergang %3</translation>
    </message>
    <message>
        <source>All hair that is seen: about level %1, drawn from %2 to %3; not a limit.</source>
        <translation>Alles sichtbare Haar: etwa Tonhöhe %1, gezeichnet von %2 bis %3; keine Grenze.</translation>
    </message>
    <message>
        <source>In the picture about level %1.</source>
        <translation>Im Bild etwa Tonhöhe %1.</translation>
    </message>
    <message>
        <source>A range was not worked out; a test strand says more.</source>
        <translation>Eine Spanne wurde nicht berechnet; eine Probesträhne sagt mehr.</translation>
    </message>
    <message>
        <source>If it lightens less or more than planned: %1 to %2 in the drawing. Your hair can come out beyond that; a test strand says more.</source>
        <translation>Wenn es weniger oder mehr aufhellt als geplant: %1 bis %2 in der Zeichnung. Ihr Haar kann auch darüber hinausgehen; eine Probesträhne sagt mehr.</translation>
    </message>
    <message>
        <source>No week is given. This is not a sign that new growth will not show; ask at the next visit.</source>
        <translation>Es wird keine Woche genannt. Das heißt nicht, dass der Nachwuchs nicht zu sehen sein wird; fragen Sie beim nächsten Besuch.</translation>
    </message>
    <message>
        <source>Worn down, new growth may begin to show from %1 weeks on.</source>
        <translation>Offen getragen kann der Nachwuchs ab %1 Wochen zu sehen sein.</translation>
    </message>
    <message>
        <source>more than %1</source>
        <translation>mehr als %1</translation>
    </message>
    <message>
        <source>Choice</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>Planned by</source>
        <translation>Geplant von</translation>
    </message>
    <message>
        <source>What the plan shows</source>
        <translation>Was der Plan zeigt</translation>
    </message>
    <message>
        <source>What stays dark</source>
        <translation>Was dunkel bleibt</translation>
    </message>
    <message>
        <source>Pain, burning or swelling at the scalp or skin, also later at home: get medical help, show this page, say that hair lightener or hair colour was used, and call us. Swelling of the face or trouble breathing: the emergency number.</source>
        <translation>Schmerz, Brennen oder Schwellung an Kopfhaut oder Haut, auch später zu Hause: ärztliche Hilfe holen, diese Seite zeigen, sagen, dass Blondiermittel oder Haarfarbe verwendet wurde, und uns anrufen. Schwellung im Gesicht oder Atemnot: den Notruf wählen.</translation>
    </message>
    <message>
        <source>Backcombing: the parting lies free, and the pushed hairs end where the step says.</source>
        <translation>Toupieren: Die Abteillinie liegt frei, und die zurückgeschobenen Haare enden, wo der Schritt es sagt.</translation>
    </message>
    <message>
        <source>Start: no product nearer to the scalp than the step says.</source>
        <translation>Beginn: kein Produkt näher an der Kopfhaut, als der Schritt sagt.</translation>
    </message>
    <message>
        <source>A stripe shows: The piece was too thick or too sharply parted. Next time take it thinner, or woven. Whether today asks for more: look at the hair and the scalp, and ask whoever teaches.</source>
        <translation>Ein Streifen ist zu sehen: Die Strähne war zu dick oder zu scharf abgeteilt. Nächstes Mal dünner oder gewebt nehmen. Ob heute mehr nötig ist: Haar und Kopfhaut ansehen und die Lehrkraft fragen.</translation>
    </message>
    <message>
        <source>A solid light patch where the hair opens: Too little was left out beside the opening. Next time leave out more.</source>
        <translation>Eine helle Fläche, wo das Haar auseinanderfällt: Neben der Öffnung wurde zu wenig ausgelassen. Nächstes Mal mehr auslassen.</translation>
    </message>
    <message>
        <source>The root looks hard in spite of backcombing: Too little was pushed back, or product was taken into the cushion. Next time, where elasticity was checked and allows it, push back more; stop where the step says.</source>
        <translation>Der Ansatz wirkt trotz Toupieren hart: Es wurde zu wenig zurückgeschoben, oder Produkt kam ins Polster. Nächstes Mal, wo die Elastizität geprüft ist und es zulässt, mehr zurückschieben; aufhören, wo der Schritt es sagt.</translation>
    </message>
    <message>
        <source>Spots near the root: Product was too near to the fold or the foil slipped. Keep the distance that the step says.</source>
        <translation>Flecken am Ansatz: Produkt war zu nah am Falz, oder die Folie ist verrutscht. Den Abstand einhalten, den der Schritt nennt.</translation>
    </message>
    <message>
        <source>One tone instead of two: Too little dark hair was left. Next time leave out more.</source>
        <translation>Ein Ton statt zwei: Es blieb zu wenig dunkles Haar. Nächstes Mal mehr auslassen.</translation>
    </message>
    <message>
        <source>Skin test, on, seen:</source>
        <translation>Hautverträglichkeitstest, am, gesehen:</translation>
    </message>
    <message>
        <source>Test strand, on, seen:</source>
        <translation>Probesträhne, am, gesehen:</translation>
    </message>
    <message>
        <source>Elasticity:</source>
        <translation>Elastizität:</translation>
    </message>
    <message>
        <source>Scalp:</source>
        <translation>Kopfhaut:</translation>
    </message>
    <message>
        <source>Looked at by:</source>
        <translation>Angesehen von:</translation>
    </message>
    <message>
        <source>Before mixing, the maker&apos;s directions are read and at hand.</source>
        <translation>Vor dem Mischen sind die Angaben des Herstellers gelesen und zur Hand.</translation>
    </message>
    <message>
        <source>across the head</source>
        <translation>quer über den Kopf</translation>
    </message>
    <message>
        <source>horizontal</source>
        <translation>waagerecht</translation>
    </message>
    <message>
        <source>front to back</source>
        <translation>von vorn nach hinten</translation>
    </message>
    <message>
        <source>vertical</source>
        <translation>senkrecht</translation>
    </message>
    <message>
        <source>diagonal</source>
        <translation>schräg</translation>
    </message>
    <message>
        <source>diagonal forward</source>
        <translation>schräg nach vorn</translation>
    </message>
    <message>
        <source>diagonal back</source>
        <translation>schräg nach hinten</translation>
    </message>
    <message>
        <source>no line</source>
        <translation>keine Linie</translation>
    </message>
    <message>
        <source>%1, middle %2</source>
        <translation>%1, Mitte %2</translation>
    </message>
    <message>
        <source>%1: %2; %3 mm from it %4: %5</source>
        <translation>%1: %2; %3 mm davon %4: %5</translation>
    </message>
    <message>
        <source>%1: %2; then %3 mm from one to the next, to %4: %5</source>
        <translation>%1: %2; dann %3 mm von einer zur nächsten, bis %4: %5</translation>
    </message>
    <message>
        <source>%1: %2; then every %3 mm, to %4: %5</source>
        <translation>%1: %2; dann alle %3 mm, bis %4: %5</translation>
    </message>
    <message>
        <source>%1 right; %2 left</source>
        <translation>%1 rechts; %2 links</translation>
    </message>
    <message>
        <source>%1; %2: %3, the other side the same</source>
        <translation>%1; %2: %3, die andere Seite gleich</translation>
    </message>
    <message>
        <source>%1; %2: %3; then %4 mm from one to the next, to %5: %6; the other side the same</source>
        <translation>%1; %2: %3; dann %4 mm von einer zur nächsten, bis %5: %6; die andere Seite gleich</translation>
    </message>
    <message>
        <source>%1; %2: %3; then every %4 mm, to %5: %6; the other side the same</source>
        <translation>%1; %2: %3; dann alle %4 mm, bis %5: %6; die andere Seite gleich</translation>
    </message>
    <message>
        <source>Its middle lies %1.</source>
        <translation>Ihre Mitte liegt %1.</translation>
    </message>
    <message>
        <source>The middle of piece %1 lies %2; piece %3 lies the same on the other side.</source>
        <translation>Die Mitte von Strähne %1 liegt %2; Strähne %3 liegt auf der anderen Seite gleich.</translation>
    </message>
    <message>
        <source>The middle of piece %1 lies %2; from one to the next it is %3 mm.</source>
        <translation>Die Mitte von Strähne %1 liegt %2; von einer zur nächsten sind es %3 mm.</translation>
    </message>
    <message>
        <source>The middle of piece %1 lies %2; the record card places the others.</source>
        <translation>Die Mitte von Strähne %1 liegt %2; wo die anderen liegen, steht auf der Karteikarte.</translation>
    </message>
    <message>
        <source>Ways from piece to piece are measured along the scalp, from the middle of one line to the middle of the next.</source>
        <translation>Wege von Strähne zu Strähne sind auf der Kopfhaut gemessen, von der Mitte einer Linie zur Mitte der nächsten.</translation>
    </message>
    <message>
        <source>Thick, mm</source>
        <translation>Dicke, mm</translation>
    </message>
    <message>
        <source>Start, mm off the scalp</source>
        <translation>Beginn, mm von der Kopfhaut</translation>
    </message>
    <message>
        <source>Backcomb: depth mm, pushed %, blend mm</source>
        <translation>Toupieren: Tiefe mm, zurückgeschoben %, Übergang mm</translation>
    </message>
    <message>
        <source>how much of the colour shows: %1</source>
        <translation>wie viel von der Farbe zu sehen ist: %1</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschah</translation>
    </message>
    <message>
        <source>Nothing was tapped in the appointment log; to be written in, a row for each bowl.</source>
        <translation>Im Protokoll des Termins steht kein Eintrag; zum Eintragen, eine Zeile je Schale.</translation>
    </message>
    <message>
        <source>Mixed at</source>
        <translation>Angemischt um</translation>
    </message>
    <message>
        <source>Looked at, level seen</source>
        <translation>Angesehen, gesehene Tonhöhe</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>Hair:</source>
        <translation>Haar:</translation>
    </message>
    <message>
        <source>What the client said:</source>
        <translation>Was die Person sagte:</translation>
    </message>
    <message>
        <source>lifts to %1 (%2 to %3), a new piece&apos;s stand-in</source>
        <translation>hellt auf zu %1 (%2 bis %3), Platzhalter einer neuen Strähne</translation>
    </message>
    <message>
        <source>That is as planned, and seen from %1 m away.</source>
        <translation>So wie geplant und aus %1 m Abstand gesehen.</translation>
    </message>
    <message>
        <source>If it lightens less or more, they may blend into one tone.</source>
        <translation>Hellt es weniger oder mehr auf, gehen sie vielleicht in einen Ton über.</translation>
    </message>
    <message>
        <source>Check before work</source>
        <translation>Vor der Arbeit prüfen</translation>
    </message>
    <message>
        <source>Order, bowls and times</source>
        <translation>Reihenfolge, Schalen und Zeiten</translation>
    </message>
</context>
<context>
    <name>Key</name>
    <message>
        <source>parting</source>
        <translation>Abteillinie</translation>
    </message>
    <message>
        <source>slice, at its true thickness</source>
        <translation>Slice in wahrer Dicke</translation>
    </message>
    <message>
        <source>weave with its teeth</source>
        <translation>Gewebt, mit seinen Zähnen</translation>
    </message>
    <message>
        <source>fine weave</source>
        <translation>Fein gewebt</translation>
    </message>
    <message>
        <source>painted with the brush</source>
        <translation>Mit dem Pinsel gemalt</translation>
    </message>
    <message>
        <source>deepened</source>
        <translation>Abgedunkelt</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>Ausgelassen</translation>
    </message>
    <message>
        <source>drop-out: stays dark between the ticks</source>
        <translation>Aussparung: bleibt dunkel zwischen den Strichen</translation>
    </message>
    <message>
        <source>backcombed; the figure is the backcomb depth in mm</source>
        <translation>Toupiert; die Zahl ist die Toupiertiefe in mm</translation>
    </message>
    <message>
        <source>behind the head</source>
        <translation>Hinter dem Kopf</translation>
    </message>
    <message>
        <source>order of work</source>
        <translation>Reihenfolge der Arbeit</translation>
    </message>
    <message>
        <source>swirl</source>
        <translation>Wirbel</translation>
    </message>
    <message>
        <source>formula %1</source>
        <translation>Rezeptur %1</translation>
    </message>
    <message>
        <source>formula %1: %2</source>
        <translation>Rezeptur %1: %2</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Legende</translation>
    </message>
    <message>
        <source>order of work, with the formula&apos;s letter</source>
        <translation>Arbeitsfolge, mit dem Buchstaben der Rezeptur</translation>
    </message>
</context>
<context>
    <name>MixRows</name>
    <message>
        <source>Outside the EU limit of 12 % (40 volumes). Your maker or your place may set less; below the limit is no sign that it suits this hair.</source>
        <translation>Außerhalb der EU-Grenze von 12 % (40 Volumen). Ihr Hersteller oder Ihr Ort kann weniger vorgeben; unter der Grenze zu liegen ist kein Zeichen, dass es für dieses Haar passt.</translation>
    </message>
    <message>
        <source>%1 % is %2 volumes exactly (label: %3 volumes), %4 mol/l.</source>
        <translation>%1 % sind genau %2 Volumen (Etikett: %3 Volumen), %4 mol/l.</translation>
    </message>
    <message>
        <source>%1 % is %2 volumes exactly, %3 mol/l.</source>
        <translation>%1 % sind genau %2 Volumen, %3 mol/l.</translation>
    </message>
    <message>
        <source>%1 volumes are %2 % exactly (label: %3 %), %4 mol/l.</source>
        <translation>%1 Volumen sind genau %2 % (Etikett: %3 %), %4 mol/l.</translation>
    </message>
    <message>
        <source>%1 volumes are %2 % exactly, %3 mol/l.</source>
        <translation>%1 Volumen sind genau %2 %, %3 mol/l.</translation>
    </message>
    <message>
        <source>No developer has this strength: found %1, allowed is %2. Look at the label again.</source>
        <translation>Kein Entwickler hat diese Stärke: gefunden %1, erlaubt ist %2. Das Etikett noch einmal ansehen.</translation>
    </message>
</context>
<context>
    <name>Page</name>
    <message>
        <source>Untitled plan</source>
        <translation>Plan ohne Titel</translation>
    </message>
    <message>
        <source>A picture of the plan, not a promise; a test strand shows how far this hair lightens.</source>
        <translation>Ein Bild des Plans, kein Versprechen; eine Probesträhne zeigt, wie weit dieses Haar aufhellt.</translation>
    </message>
</context>
<context>
    <name>Piece</name>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>Left-out %1</source>
        <translation>Auslassung %1</translation>
    </message>
    <message>
        <source>Piece %1</source>
        <translation>Strähne %1</translation>
    </message>
    <message>
        <source>starts %1 off the scalp</source>
        <translation>beginnt %1 über der Kopfhaut</translation>
    </message>
    <message>
        <source>starts at the scalp</source>
        <translation>beginnt an der Kopfhaut</translation>
    </message>
    <message>
        <source>horizontal rows</source>
        <translation>waagerechte Passées</translation>
    </message>
    <message>
        <source>vertical rows</source>
        <translation>senkrechte Passées</translation>
    </message>
    <message>
        <source>diagonal forward rows</source>
        <translation>Passées schräg nach vorn</translation>
    </message>
    <message>
        <source>diagonal back rows</source>
        <translation>Passées schräg nach hinten</translation>
    </message>
    <message>
        <source>pivoting rows</source>
        <translation>drehende Passées</translation>
    </message>
    <message>
        <source>Section %1</source>
        <translation>Abteilung %1</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>1 piece</source>
        <translation>1 Strähne</translation>
    </message>
    <message>
        <source>%1 pieces</source>
        <translation>%1 Strähnen</translation>
    </message>
    <message>
        <source>follows the other side</source>
        <translation>folgt der anderen Seite</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>below the hairline</source>
        <translation>unter der Haarlinie</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>temple</source>
        <translation>Schläfe</translation>
    </message>
    <message>
        <source>top</source>
        <translation>Oberkopf</translation>
    </message>
    <message>
        <source>crown</source>
        <translation>Wirbelpartie</translation>
    </message>
    <message>
        <source>side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>back</source>
        <translation>Hinterkopf</translation>
    </message>
    <message>
        <source>nape</source>
        <translation>Nacken</translation>
    </message>
</context>
<context>
    <name>PlanChanges</name>
    <message>
        <source>1 piece added: %1</source>
        <translation>1 Strähne hinzugefügt: %1</translation>
    </message>
    <message>
        <source>%2 pieces added: %1</source>
        <translation>%2 Strähnen hinzugefügt: %1</translation>
    </message>
    <message>
        <source>1 piece removed: %1</source>
        <translation>1 Strähne entfernt: %1</translation>
    </message>
    <message>
        <source>%2 pieces removed: %1</source>
        <translation>%2 Strähnen entfernt: %1</translation>
    </message>
    <message>
        <source>1 piece changed: %1</source>
        <translation>1 Strähne geändert: %1</translation>
    </message>
    <message>
        <source>%2 pieces changed: %1</source>
        <translation>%2 Strähnen geändert: %1</translation>
    </message>
    <message>
        <source>1 section added: %1</source>
        <translation>1 Abteilung hinzugefügt: %1</translation>
    </message>
    <message>
        <source>%2 sections added: %1</source>
        <translation>%2 Abteilungen hinzugefügt: %1</translation>
    </message>
    <message>
        <source>1 section removed: %1</source>
        <translation>1 Abteilung entfernt: %1</translation>
    </message>
    <message>
        <source>%2 sections removed: %1</source>
        <translation>%2 Abteilungen entfernt: %1</translation>
    </message>
    <message>
        <source>1 section changed: %1</source>
        <translation>1 Abteilung geändert: %1</translation>
    </message>
    <message>
        <source>%2 sections changed: %1</source>
        <translation>%2 Abteilungen geändert: %1</translation>
    </message>
    <message>
        <source>1 formula added: %1</source>
        <translation>1 Rezeptur hinzugefügt: %1</translation>
    </message>
    <message>
        <source>%2 formulas added: %1</source>
        <translation>%2 Rezepturen hinzugefügt: %1</translation>
    </message>
    <message>
        <source>1 formula removed: %1</source>
        <translation>1 Rezeptur entfernt: %1</translation>
    </message>
    <message>
        <source>%2 formulas removed: %1</source>
        <translation>%2 Rezepturen entfernt: %1</translation>
    </message>
    <message>
        <source>1 formula changed: %1</source>
        <translation>1 Rezeptur geändert: %1</translation>
    </message>
    <message>
        <source>%2 formulas changed: %1</source>
        <translation>%2 Rezepturen geändert: %1</translation>
    </message>
    <message>
        <source>1 root shadow or glaze added: %1</source>
        <translation>1 Ansatzschatten oder Glanztönung hinzugefügt: %1</translation>
    </message>
    <message>
        <source>%2 root shadows or glazes added: %1</source>
        <translation>%2 Ansatzschatten oder Glanztönungen hinzugefügt: %1</translation>
    </message>
    <message>
        <source>1 root shadow or glaze removed: %1</source>
        <translation>1 Ansatzschatten oder Glanztönung entfernt: %1</translation>
    </message>
    <message>
        <source>%2 root shadows or glazes removed: %1</source>
        <translation>%2 Ansatzschatten oder Glanztönungen entfernt: %1</translation>
    </message>
    <message>
        <source>1 root shadow or glaze changed: %1</source>
        <translation>1 Ansatzschatten oder Glanztönung geändert: %1</translation>
    </message>
    <message>
        <source>%2 root shadows or glazes changed: %1</source>
        <translation>%2 Ansatzschatten oder Glanztönungen geändert: %1</translation>
    </message>
    <message>
        <source>1 note added: %1</source>
        <translation>1 Notiz hinzugefügt: %1</translation>
    </message>
    <message>
        <source>%2 notes added: %1</source>
        <translation>%2 Notizen hinzugefügt: %1</translation>
    </message>
    <message>
        <source>1 note removed: %1</source>
        <translation>1 Notiz entfernt: %1</translation>
    </message>
    <message>
        <source>%2 notes removed: %1</source>
        <translation>%2 Notizen entfernt: %1</translation>
    </message>
    <message>
        <source>1 note changed: %1</source>
        <translation>1 Notiz geändert: %1</translation>
    </message>
    <message>
        <source>%2 notes changed: %1</source>
        <translation>%2 Notizen geändert: %1</translation>
    </message>
    <message>
        <source>1 choice added: %1</source>
        <translation>1 Variante hinzugefügt: %1</translation>
    </message>
    <message>
        <source>%2 choices added: %1</source>
        <translation>%2 Varianten hinzugefügt: %1</translation>
    </message>
    <message>
        <source>1 choice removed: %1</source>
        <translation>1 Variante entfernt: %1</translation>
    </message>
    <message>
        <source>%2 choices removed: %1</source>
        <translation>%2 Varianten entfernt: %1</translation>
    </message>
    <message>
        <source>1 choice or its aims changed: %1</source>
        <translation>1 Variante oder ihre Ziele geändert: %1</translation>
    </message>
    <message>
        <source>%2 choices or their aims changed: %1</source>
        <translation>%2 Varianten oder ihre Ziele geändert: %1</translation>
    </message>
    <message>
        <source>The title: “%1” became “%2”</source>
        <translation>Der Titel: aus „%1“ wurde „%2“</translation>
    </message>
    <message>
        <source>The notes of the plan</source>
        <translation>Die Bemerkungen zum Plan</translation>
    </message>
    <message>
        <source>Assumptions</source>
        <translation>Annahmen</translation>
    </message>
    <message>
        <source>Another choice is worked on</source>
        <translation>Es wird an einer anderen Variante gearbeitet</translation>
    </message>
    <message>
        <source>The head: measures, hairline, part or swirls</source>
        <translation>Der Kopf: Maße, Haarlinie, Scheitel oder Wirbel</translation>
    </message>
    <message>
        <source>The hair: how much, how long, which level, bands, condition</source>
        <translation>Das Haar: wie viel, wie lang, welche Tonhöhe, Bänder, Zustand</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>The handout: its parts or texts</source>
        <translation>Der Handzettel: seine Teile oder Texte</translation>
    </message>
    <message>
        <source>The appointment&apos;s log: %1 taps became %2</source>
        <translation>Das Protokoll des Termins: aus %1 Einträgen wurden %2</translation>
    </message>
    <message>
        <source>The appointment&apos;s log</source>
        <translation>Das Protokoll des Termins</translation>
    </message>
    <message>
        <source>The agreed picture</source>
        <translation>Das vereinbarte Bild</translation>
    </message>
    <message>
        <source>The visits</source>
        <translation>Die Besuche</translation>
    </message>
</context>
<context>
    <name>Price</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 min of work</source>
        <translation>%1 min Arbeit</translation>
    </message>
    <message>
        <source>%1 g mixed</source>
        <translation>%1 g gemischt</translation>
    </message>
    <message>
        <source>%1 min of work and %2 g mixed</source>
        <translation>%1 min Arbeit und %2 g gemischt</translation>
    </message>
</context>
<context>
    <name>Provenance</name>
    <message>
        <source>published, [Loussouarn2005]</source>
        <translation>veröffentlicht, [Loussouarn2005]</translation>
    </message>
    <message>
        <source>published, mean fibre area in a hair-science book</source>
        <translation>veröffentlicht, mittlerer Faserquerschnitt in einem Fachbuch über Haar</translation>
    </message>
    <message>
        <source>as on our drawn head</source>
        <translation>wie auf unserem gezeichneten Kopf</translation>
    </message>
    <message>
        <source>Not typed: from the chosen size, survey [ANSUR2].</source>
        <translation>Nicht eingetragen: aus der gewählten Größe, Reihenmessung [ANSUR2].</translation>
    </message>
    <message>
        <source>Not typed: follows the size and what is typed, survey [ANSUR2].</source>
        <translation>Nicht eingetragen: folgt der Größe und dem Eingetragenen, Reihenmessung [ANSUR2].</translation>
    </message>
    <message>
        <source>Not typed: follows the size and what is typed, survey [ANSUR1].</source>
        <translation>Nicht eingetragen: folgt der Größe und dem Eingetragenen, Reihenmessung [ANSUR1].</translation>
    </message>
    <message>
        <source>Not typed.</source>
        <translation>Nicht eingetragen.</translation>
    </message>
    <message>
        <source>Typed by you.</source>
        <translation>Von Ihnen eingetragen.</translation>
    </message>
    <message>
        <source>Our default: %1.</source>
        <translation>Unsere Vorgabe: %1.</translation>
    </message>
    <message>
        <source>Our default: own assumption.</source>
        <translation>Unsere Vorgabe: eigene Annahme.</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>mixed</source>
        <translation>gemischt</translation>
    </message>
    <message>
        <source>Whole head</source>
        <translation>Ganzer Kopf</translation>
    </message>
    <message>
        <source>two clear levels</source>
        <translation>zwei klare Stufen</translation>
    </message>
    <message>
        <source>soft</source>
        <translation>weich</translation>
    </message>
    <message>
        <source>one tone</source>
        <translation>ein Ton</translation>
    </message>
    <message>
        <source>not lighter than %1</source>
        <translation>nicht heller als %1</translation>
    </message>
    <message>
        <source>not darker than %1</source>
        <translation>nicht dunkler als %1</translation>
    </message>
    <message>
        <source>aim %1</source>
        <translation>Ziel %1</translation>
    </message>
    <message>
        <source>%1 too light</source>
        <translation>%1 zu hell</translation>
    </message>
    <message>
        <source>%1 too dark</source>
        <translation>%1 zu dunkel</translation>
    </message>
    <message>
        <source>another contrast</source>
        <translation>anderer Kontrast</translation>
    </message>
    <message>
        <source>lightest %1 over</source>
        <translation>hellstes %1 darüber</translation>
    </message>
    <message>
        <source>darkest %1 under</source>
        <translation>dunkelstes %1 darunter</translation>
    </message>
    <message>
        <source>met</source>
        <translation>erreicht</translation>
    </message>
    <message>
        <source>in</source>
        <comment>inches</comment>
        <translation>in</translation>
    </message>
    <message>
        <source>Back to where you were (Escape)</source>
        <translation>Zurück zur vorigen Ansicht (Escape)</translation>
    </message>
    <message>
        <source>Usual part</source>
        <translation>Üblicher Scheitel</translation>
    </message>
    <message>
        <source>Swirl</source>
        <translation>Wirbel</translation>
    </message>
    <message>
        <source>Predicted look, %1</source>
        <translation>Vorhergesagter Look, %1</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
</context>
<context>
    <name>Reading</name>
    <message>
        <source>Light as %1</source>
        <translation>Hell wie %1</translation>
    </message>
    <message>
        <source>Level %1</source>
        <translation>Tonhöhe %1</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>Seen from %1 m it is two clear levels: light and dark stand %2 L* apart.</source>
        <translation>Aus %1 m gesehen sind es zwei klare Stufen: Hell und Dunkel liegen %2 L* auseinander.</translation>
    </message>
    <message>
        <source>Seen from %1 m it is soft: light and dark can be told apart (%2 L*), but run into each other.</source>
        <translation>Aus %1 m gesehen ist es weich: Hell und Dunkel sind zu unterscheiden (%2 L*), laufen aber ineinander.</translation>
    </message>
    <message>
        <source>Seen from %1 m it is one tone: neighbouring hair differs by %2 L* on average, without two levels.</source>
        <translation>Aus %1 m gesehen ist es ein Ton: benachbartes Haar unterscheidet sich im Mittel um %2 L*, ohne zwei Stufen.</translation>
    </message>
    <message>
        <source>Too little of this hair is seen to judge its contrast (from %1 m).</source>
        <translation>Von diesem Haar ist zu wenig zu sehen, um seinen Kontrast zu beurteilen (aus %1 m).</translation>
    </message>
    <message>
        <source>L* is lightness as the eye sees it: 0 is black, 100 is white.</source>
        <translation>L* ist die Helligkeit, wie das Auge sie sieht: 0 ist Schwarz, 100 ist Weiß.</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Move %1</source>
        <translation>%1 verschieben</translation>
    </message>
    <message>
        <source>Move %1 items</source>
        <translation>%1 Dinge verschieben</translation>
    </message>
    <message>
        <source>Moving along the head. Escape drops it.</source>
        <translation>Verschieben entlang des Kopfs. Escape verwirft es.</translation>
    </message>
    <message>
        <source>Move a point of %1</source>
        <translation>Punkt verschieben: %1</translation>
    </message>
    <message>
        <source>Thickness of %1</source>
        <translation>Dicke: %1</translation>
    </message>
    <message>
        <source>Start of %1</source>
        <translation>Beginn: %1</translation>
    </message>
    <message>
        <source>%1 thick</source>
        <translation>%1 dick</translation>
    </message>
    <message>
        <source>Starts %1 off the scalp</source>
        <translation>Beginnt %1 über der Kopfhaut</translation>
    </message>
    <message>
        <source>Starts at the scalp</source>
        <translation>Beginnt an der Kopfhaut</translation>
    </message>
    <message>
        <source>Moving one end or bend. Escape drops it.</source>
        <translation>Ein Ende oder einen Knick verschieben. Escape verwirft es.</translation>
    </message>
    <message>
        <source>Shape of %1</source>
        <translation>Form: %1</translation>
    </message>
    <message>
        <source>The outline crosses itself: pieces stay as they were until it does not.</source>
        <translation>Der Umriss kreuzt sich: Die Strähnen bleiben, wie sie waren, bis er es nicht mehr tut.</translation>
    </message>
    <message>
        <source>No room for half a piece: pieces stay as they were until there is.</source>
        <translation>Kein Platz für eine halbe Strähne: Die Strähnen bleiben, wie sie waren, bis Platz ist.</translation>
    </message>
    <message>
        <source>More pieces than a section may have: pieces stay as they were.</source>
        <translation>Mehr Strähnen, als eine Abteilung haben darf: Die Strähnen bleiben, wie sie waren.</translation>
    </message>
    <message>
        <source>Moving a corner; it catches on lines, with Ctrl it is free. Escape drops it.</source>
        <translation>Eine Ecke verschieben; sie rastet an Linien ein, mit Strg ist sie frei. Escape verwirft es.</translation>
    </message>
    <message>
        <source>Left-outs of %1</source>
        <translation>Auslassungen: %1</translation>
    </message>
    <message>
        <source>%1 left out between pieces</source>
        <translation>%1 zwischen den Strähnen ausgelassen</translation>
    </message>
    <message>
        <source>%1 to %2 left out between pieces</source>
        <translation>%1 bis %2 zwischen den Strähnen ausgelassen</translation>
    </message>
    <message>
        <source>piece %1</source>
        <translation>Strähne %1</translation>
    </message>
    <message>
        <source>section %1</source>
        <translation>Abteilung %1</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>No more than %1 points fit.</source>
        <translation>Mehr als %1 Punkte gehen nicht.</translation>
    </message>
    <message>
        <source>That lies outside the hair: set it inside the hairline.</source>
        <translation>Das liegt außerhalb des Haars: innerhalb der Haarlinie setzen.</translation>
    </message>
    <message>
        <source>“%1” is no thickness: allowed is %2.</source>
        <translation>„%1“ ist keine Dicke: erlaubt ist %2.</translation>
    </message>
    <message>
        <source>“%1” is no length.</source>
        <translation>„%1“ ist keine Länge.</translation>
    </message>
    <message>
        <source>The next stretch is %1 long: click or press Space to set it.</source>
        <translation>Das nächste Stück wird %1 lang: klicken oder die Leertaste drücken, um es zu setzen.</translation>
    </message>
    <message>
        <source>Click points along the parting, or draw with the button down.</source>
        <translation>Punkte entlang der Abteillinie klicken oder mit gedrückter Taste zeichnen.</translation>
    </message>
    <message>
        <source>Click points along the hair to leave out, or draw with the button down.</source>
        <translation>Punkte entlang des Haars klicken, das ausgelassen wird, oder mit gedrückter Taste zeichnen.</translation>
    </message>
    <message>
        <source>Click the corners of the section; it catches on lines (Ctrl: free). By keyboard: arrows and Space.</source>
        <translation>Die Ecken der Abteilung klicken; sie rasten an Linien ein (Strg: frei). Mit der Tastatur: Pfeile und Leertaste.</translation>
    </message>
    <message>
        <source>Draw the parting across a section, from edge to edge: it splits the section.</source>
        <translation>Die Abteillinie quer über eine Abteilung zeichnen, von Rand zu Rand: Sie teilt die Abteilung.</translation>
    </message>
    <message>
        <source>Draw how the hair is parted, from the front to the back.</source>
        <translation>Zeichnen, wie das Haar gescheitelt ist, von vorn nach hinten.</translation>
    </message>
    <message>
        <source>%1 thick; type a number to change it. Enter ends the piece, Escape drops it.</source>
        <translation>%1 dick; eine Zahl eingeben, um es zu ändern. Eingabe beendet die Strähne, Escape verwirft sie.</translation>
    </message>
    <message>
        <source>%1 left out; type a number to change it. Enter ends, Escape drops it.</source>
        <translation>%1 ausgelassen; eine Zahl eingeben, um es zu ändern. Eingabe beendet, Escape verwirft.</translation>
    </message>
    <message>
        <source>Next corner; a typed number sets its distance. The first corner or Enter closes, a right click or Backspace takes one back.</source>
        <translation>Nächste Ecke; eine eingegebene Zahl bestimmt ihren Abstand. Die erste Ecke oder Eingabe schließt, Rechtsklick oder Rücktaste nimmt eine zurück.</translation>
    </message>
    <message>
        <source>Enter or a double click splits the section here. Backspace or a right click takes a point back.</source>
        <translation>Eingabe oder Doppelklick teilt die Abteilung hier. Rücktaste oder Rechtsklick nimmt einen Punkt zurück.</translation>
    </message>
    <message>
        <source>Enter or a double click sets the part. Backspace or a right click takes a point back.</source>
        <translation>Eingabe oder Doppelklick setzt den Scheitel. Rücktaste oder Rechtsklick nimmt einen Punkt zurück.</translation>
    </message>
    <message>
        <source>A piece needs two points at least: click where it ends.</source>
        <translation>Eine Strähne braucht mindestens zwei Punkte: klicken, wo sie endet.</translation>
    </message>
    <message>
        <source>Draw left-out %1</source>
        <translation>Auslassung %1 zeichnen</translation>
    </message>
    <message>
        <source>Draw piece %1</source>
        <translation>Strähne %1 zeichnen</translation>
    </message>
    <message>
        <source>A section needs three corners at least.</source>
        <translation>Eine Abteilung braucht mindestens drei Ecken.</translation>
    </message>
    <message>
        <source>The outline crosses itself at the red mark. Backspace takes corners back.</source>
        <translation>Der Umriss kreuzt sich an der roten Marke. Die Rücktaste nimmt Ecken zurück.</translation>
    </message>
    <message>
        <source>This outline holds too little hair for a piece: set a corner farther off.</source>
        <translation>In diesem Umriss ist zu wenig Haar für eine Strähne: eine Ecke weiter weg setzen.</translation>
    </message>
    <message>
        <source>Draw section %1</source>
        <translation>Abteilung %1 zeichnen</translation>
    </message>
    <message>
        <source>A parting needs two points at least.</source>
        <translation>Eine Abteillinie braucht mindestens zwei Punkte.</translation>
    </message>
    <message>
        <source>There is no section under this parting: a parting splits a section from edge to edge.</source>
        <translation>Unter dieser Abteillinie liegt keine Abteilung: Eine Abteillinie teilt eine Abteilung von Rand zu Rand.</translation>
    </message>
    <message>
        <source>This parting does not cross the section from edge to edge: draw it on to both edges.</source>
        <translation>Diese Abteillinie geht nicht von Rand zu Rand durch die Abteilung: bis zu beiden Rändern weiterzeichnen.</translation>
    </message>
    <message>
        <source>Split a section</source>
        <translation>Eine Abteilung teilen</translation>
    </message>
    <message>
        <source>A part needs two points at least.</source>
        <translation>Ein Scheitel braucht mindestens zwei Punkte.</translation>
    </message>
    <message>
        <source>Draw the part</source>
        <translation>Den Scheitel zeichnen</translation>
    </message>
    <message>
        <source>Draw a section first, then click into it here.</source>
        <translation>Zuerst eine Abteilung zeichnen, dann hier hineinklicken.</translation>
    </message>
    <message>
        <source>There is no section here: click into one.</source>
        <translation>Hier ist keine Abteilung: in eine hineinklicken.</translation>
    </message>
    <message>
        <source>This section&apos;s outline crosses itself: move a corner first.</source>
        <translation>Der Umriss dieser Abteilung kreuzt sich: zuerst eine Ecke verschieben.</translation>
    </message>
    <message>
        <source>There is no room for half a piece in this section: make it larger.</source>
        <translation>In dieser Abteilung ist kein Platz für eine halbe Strähne: größer machen.</translation>
    </message>
    <message>
        <source>Lay out a section</source>
        <translation>Eine Abteilung auslegen</translation>
    </message>
    <message>
        <source>Click into a section: it is filled with equal pieces and left-outs; its card changes the rule.</source>
        <translation>In eine Abteilung klicken: Sie füllt sich mit gleichen Strähnen und Auslassungen; ihre Karte ändert die Regel.</translation>
    </message>
    <message>
        <source>Press on a piece, then draw along it.</source>
        <translation>Auf eine Strähne drücken, dann an ihr entlang zeichnen.</translation>
    </message>
    <message>
        <source>Drop-out of piece %1</source>
        <translation>Aussparung in Strähne %1</translation>
    </message>
    <message>
        <source>Draw along a piece what stays dark; a click leaves out 20 mm, a click on a drop-out takes it away.</source>
        <translation>Entlang einer Strähne zeichnen, was dunkel bleibt; ein Klick lässt 20 mm aus, ein Klick auf eine Aussparung nimmt sie weg.</translation>
    </message>
    <message>
        <source>%1 left dark; type a number for its exact length.</source>
        <translation>%1 bleiben dunkel; für die genaue Länge eine Zahl eingeben.</translation>
    </message>
    <message>
        <source>Add a swirl</source>
        <translation>Einen Wirbel hinzufügen</translation>
    </message>
    <message>
        <source>Move the swirl</source>
        <translation>Den Wirbel verschieben</translation>
    </message>
    <message>
        <source>Remove a swirl</source>
        <translation>Einen Wirbel entfernen</translation>
    </message>
    <message>
        <source>Click where the hair swirls. Shift+click adds a second, Alt+click on it changes its turn.</source>
        <translation>Klicken, wo das Haar wirbelt. Umschalt+Klick fügt einen zweiten hinzu, Alt+Klick darauf ändert seine Drehung.</translation>
    </message>
    <message>
        <source>Click or drag moves the nearer swirl. Alt+click changes its turn, Delete removes it.</source>
        <translation>Klicken oder Ziehen verschiebt den näheren Wirbel. Alt+Klick ändert seine Drehung, Entf nimmt ihn weg.</translation>
    </message>
    <message>
        <source>Turn of the swirl</source>
        <translation>Drehung des Wirbels</translation>
    </message>
    <message>
        <source>Remove a note</source>
        <translation>Eine Notiz entfernen</translation>
    </message>
    <message>
        <source>Change a note</source>
        <translation>Eine Notiz ändern</translation>
    </message>
    <message>
        <source>Write a note</source>
        <translation>Eine Notiz schreiben</translation>
    </message>
    <message>
        <source>Click where the note stands and type it; Enter keeps it, Escape drops it. Click a note to change it. Notes are printed too: nothing about a person.</source>
        <translation>Klicken, wo die Notiz steht, und sie schreiben; Eingabe behält sie, Escape verwirft sie. Auf eine Notiz klicken, um sie zu ändern. Notizen werden mitgedruckt: nichts über eine Person.</translation>
    </message>
    <message>
        <source>Renumber</source>
        <translation>Neu nummerieren</translation>
    </message>
    <message>
        <source>Number by tapping</source>
        <translation>Durch Antippen nummerieren</translation>
    </message>
    <message>
        <source>Tap the pieces in working order; type a number to begin with it. Drag one piece onto another to take its number.</source>
        <translation>Die Strähnen in der Reihenfolge der Arbeit antippen; eine Zahl eingeben, um damit zu beginnen. Eine Strähne auf eine andere ziehen, um deren Nummer zu nehmen.</translation>
    </message>
    <message>
        <source>The next piece gets number %1. Enter ends.</source>
        <translation>Die nächste Strähne bekommt Nummer %1. Eingabe beendet.</translation>
    </message>
    <message>
        <source>Point to where you measure to.</source>
        <translation>Zeigen, bis wohin gemessen wird.</translation>
    </message>
    <message>
        <source>Click where you measure from.</source>
        <translation>Klicken, von wo aus gemessen wird.</translation>
    </message>
    <message>
        <source>the apex</source>
        <translation>der höchste Punkt des Kopfs</translation>
    </message>
    <message>
        <source>the middle of the front hairline</source>
        <translation>die Mitte der vorderen Haarlinie</translation>
    </message>
    <message>
        <source>the middle of the nape</source>
        <translation>die Mitte des Nackens</translation>
    </message>
    <message>
        <source>the occipital bone</source>
        <translation>der Hinterhauptknochen</translation>
    </message>
    <message>
        <source>the client&apos;s right temple</source>
        <translation>die rechte Schläfe</translation>
    </message>
    <message>
        <source>the client&apos;s left temple</source>
        <translation>die linke Schläfe</translation>
    </message>
    <message>
        <source>the swirl</source>
        <translation>der Wirbel</translation>
    </message>
    <message>
        <source>the hairline</source>
        <translation>die Haarlinie</translation>
    </message>
    <message>
        <source>the centre line</source>
        <translation>die Mittellinie</translation>
    </message>
    <message>
        <source>the ear-to-ear line</source>
        <translation>die Linie von Ohr zu Ohr</translation>
    </message>
    <message>
        <source>the parietal ridge</source>
        <translation>die Hutlinie</translation>
    </message>
    <message>
        <source>the occipital line</source>
        <translation>die Hinterhauptlinie</translation>
    </message>
    <message>
        <source>the part</source>
        <translation>der Scheitel</translation>
    </message>
    <message>
        <source>the edge of a section</source>
        <translation>der Rand einer Abteilung</translation>
    </message>
    <message>
        <source>a section&apos;s corner</source>
        <translation>die Ecke einer Abteilung</translation>
    </message>
    <message>
        <source>the parting of piece %1</source>
        <translation>die Abteillinie der Strähne %1</translation>
    </message>
    <message>
        <source>the first corner: closes the outline</source>
        <translation>die erste Ecke: schließt den Umriss</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>Punkt: %1</translation>
    </message>
    <message>
        <source>where %1 meets %2</source>
        <translation>Kreuzung: %1 und %2</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>Linie: %1</translation>
    </message>
</context>
<context>
    <name>Things</name>
    <message>
        <source>1 section</source>
        <translation>1 Abteilung</translation>
    </message>
    <message>
        <source>section “%1”</source>
        <translation>Abteilung „%1“</translation>
    </message>
    <message>
        <source>%1 sections</source>
        <translation>%1 Abteilungen</translation>
    </message>
    <message>
        <source>1 note</source>
        <translation>1 Notiz</translation>
    </message>
    <message>
        <source>%1 notes</source>
        <translation>%1 Notizen</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
</context>
<context>
    <name>View</name>
    <message>
        <source>Front</source>
        <translation>Vorn</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Hinterkopf</translation>
    </message>
    <message>
        <source>Client&apos;s left</source>
        <translation>Linke Kopfseite</translation>
    </message>
    <message>
        <source>Client&apos;s right</source>
        <translation>Rechte Kopfseite</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Oberkopf</translation>
    </message>
    <message>
        <source>Crown</source>
        <translation>Wirbelpartie</translation>
    </message>
</context>
<context>
    <name>WornBar</name>
    <message>
        <source>close, 0.6 m</source>
        <translation>nah, 0,6 m</translation>
    </message>
    <message>
        <source>talking, 1 m</source>
        <translation>im Gespräch, 1 m</translation>
    </message>
    <message>
        <source>salon mirror, 2 m</source>
        <translation>im Salonspiegel, 2 m</translation>
    </message>
    <message>
        <source>across the room, 3 m</source>
        <translation>durch den Raum, 3 m</translation>
    </message>
</context>
<context>
    <name>combdraft::appointment::AfterView</name>
    <message>
        <source>What came, by zone</source>
        <translation>Was herauskam, je Zone</translation>
    </message>
    <message>
        <source>Levels that came, by zone</source>
        <translation>Tonhöhen, die herauskamen, je Zone</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>level that came</source>
        <translation>Tonhöhe, die herauskam</translation>
    </message>
    <message>
        <source>from, to</source>
        <translation>von, bis</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>Strähnen</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>colour left</source>
        <translation>Restpigment</translation>
    </message>
    <message>
        <source>A finish that you type</source>
        <translation>Ein Endton, den Sie eintragen</translation>
    </message>
    <message>
        <source>Level and tone that your toner is to leave. A zone&apos;s own finish comes before the one for all.</source>
        <translation>Tonhöhe und Farbrichtung, die Ihr Toner hinterlassen soll. Der eigene Endton einer Zone geht dem für alle vor.</translation>
    </message>
    <message>
        <source>All zones with a level</source>
        <translation>Alle Zonen mit einer Tonhöhe</translation>
    </message>
    <message>
        <source>Try the finish</source>
        <translation>Endton ausprobieren</translation>
    </message>
    <message>
        <source>Puts the levels that came and this finish into the plan; one undo takes it back</source>
        <translation>Setzt die Tonhöhen, die herauskamen, und diesen Endton in den Plan; einmal Rückgängig nimmt es zurück</translation>
    </message>
    <message>
        <source>See it on the heads</source>
        <translation>Auf den Köpfen ansehen</translation>
    </message>
    <message>
        <source>Back to the sheet, where the look follows the plan; undo shows it as before</source>
        <translation>Zurück zum Kopfblatt, wo der Look dem Plan folgt; Rückgängig zeigt ihn wie vorher</translation>
    </message>
    <message>
        <source>A level is judged on rinsed, dry hair in daylight, a strand first. The maker&apos;s directions for the toner come before what is typed here.</source>
        <translation>Eine Tonhöhe wird an ausgespültem, trockenem Haar bei Tageslicht beurteilt, zuerst eine Strähne. Die Angaben des Herstellers zum Toner gehen dem vor, was hier eingetragen wird.</translation>
    </message>
    <message>
        <source>The appointment log in this plan cannot be read and is kept as it is. %1</source>
        <translation>Das Protokoll des Termins in diesem Plan ist nicht lesbar und bleibt, wie es ist. %1</translation>
    </message>
    <message>
        <source>As last tapped in the log. Once a finish was tried, “planned” is what came; undo shows what was planned.</source>
        <translation>Wie zuletzt im Protokoll eingetragen. Sobald ein Endton ausprobiert ist, steht unter „geplant“, was herauskam; Rückgängig zeigt, was geplant war.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Give both, a level and a tone, or neither.</source>
        <translation>Beides angeben, Tonhöhe und Farbrichtung, oder keines.</translation>
    </message>
    <message>
        <source>Toning does not lighten. Typed: level %1; right would be at most the level of the lowest piece here, %2.</source>
        <translation>Tönen hellt nicht auf. Eingetragen: Tonhöhe %1; richtig wäre höchstens die Tonhöhe der dunkelsten Strähne hier, %2.</translation>
    </message>
    <message>
        <source>The finish is in the plan, with the levels that came. Look at it on the heads; undo takes it back.</source>
        <translation>Der Endton ist im Plan, mit den Tonhöhen, die herauskamen. Auf den Köpfen ansehen; Rückgängig nimmt ihn zurück.</translation>
    </message>
    <message>
        <source>The plan shows this finish already.</source>
        <translation>Der Plan zeigt diesen Endton schon.</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Es wurde nichts geändert.</translation>
    </message>
    <message>
        <source>No level was tapped after a rinse yet. With product on, hair looks lighter than it is: in the log tap Rinsed, look at clean, dry hair, type the level and tap Looked.</source>
        <translation>Nach dem Ausspülen wurde noch keine Tonhöhe eingetragen. Mit Produkt sieht Haar heller aus, als es ist: im Protokoll „Ausgespült“ antippen, sauberes, trockenes Haar ansehen, die Tonhöhe eintragen und „Angesehen“ antippen.</translation>
    </message>
</context>
<context>
    <name>combdraft::appointment::AppointmentPage</name>
    <message>
        <source>Appointment</source>
        <translation>Termin</translation>
    </message>
    <message>
        <source>What is shown of the appointment</source>
        <translation>Was vom Termin gezeigt wird</translation>
    </message>
    <message>
        <source>Work list</source>
        <translation>Arbeitsliste</translation>
    </message>
    <message>
        <source>Order, bowls, foils and minutes, before it begins</source>
        <translation>Reihenfolge, Schalen, Folien und Minuten, bevor sie beginnt</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Protokoll</translation>
    </message>
    <message>
        <source>What is placed, looked at, taken out and rinsed, as it happens</source>
        <translation>Was aufgetragen, angesehen, herausgenommen und ausgespült wird, während es geschieht</translation>
    </message>
    <message>
        <source>After the rinse</source>
        <translation>Nach dem Ausspülen</translation>
    </message>
    <message>
        <source>Which level came where; finishes and corrections that you type</source>
        <translation>Welche Tonhöhe wo herauskam; Endtöne und Korrekturen, die Sie eintragen</translation>
    </message>
    <message>
        <source>Planned and got</source>
        <translation>Geplant und erreicht</translation>
    </message>
    <message>
        <source>Levels piece by piece, and your own speed and amounts</source>
        <translation>Tonhöhen Strähne für Strähne und Ihr eigenes Tempo und Ihre Mengen</translation>
    </message>
    <message>
        <source>Next visit</source>
        <translation>Nächster Besuch</translation>
    </message>
    <message>
        <source>What shows by then, which pieces to repeat, and its plan</source>
        <translation>Was sich bis dahin zeigt, welche Strähnen zu wiederholen sind, und der Plan dafür</translation>
    </message>
    <message>
        <source>Back to the sheet</source>
        <translation>Zurück zum Kopfblatt</translation>
    </message>
    <message>
        <source>Back to where you were (Escape); the log stays as it is</source>
        <translation>Zurück zur vorigen Ansicht (Escape); das Protokoll bleibt, wie es ist</translation>
    </message>
</context>
<context>
    <name>combdraft::appointment::CorrectionsBox</name>
    <message>
        <source>Too striped, too light, too cool: put depth back</source>
        <translation>Zu streifig, zu hell, zu kühl: Tiefe zurückbringen</translation>
    </message>
    <message>
        <source>Lightening again is not proposed here: look at the hair, ask the maker&apos;s directions; in doubt do not go on.</source>
        <translation>Noch einmal aufhellen wird hier nicht vorgeschlagen: das Haar ansehen, die Angaben des Herstellers befragen; im Zweifel nicht weitermachen.</translation>
    </message>
    <message>
        <source>Pieces to correct</source>
        <translation>Strähnen, die zu korrigieren sind</translation>
    </message>
    <message>
        <source>Chosen pieces</source>
        <translation>Gewählte Strähnen</translation>
    </message>
    <message>
        <source>Deepen the chosen pieces</source>
        <translation>Die gewählten Strähnen abdunkeln</translation>
    </message>
    <message>
        <source>To the level and tone above; one undo takes it back</source>
        <translation>Auf Tonhöhe und Farbrichtung von oben; einmal Rückgängig nimmt es zurück</translation>
    </message>
    <message>
        <source>Leave them out next time</source>
        <translation>Nächstes Mal auslassen</translation>
    </message>
    <message>
        <source>The placement keeps their place dark from now on; one undo takes it back</source>
        <translation>Die Platzierung hält ihre Stelle von jetzt an dunkel; einmal Rückgängig nimmt es zurück</translation>
    </message>
    <message>
        <source>Root shadow</source>
        <translation>Ansatzschatten</translation>
    </message>
    <message>
        <source>Where the root shadow goes</source>
        <translation>Wo der Ansatzschatten hinkommt</translation>
    </message>
    <message>
        <source>Whole head</source>
        <translation>Ganzer Kopf</translation>
    </message>
    <message>
        <source>Reaches off the scalp</source>
        <translation>Reicht über die Kopfhaut</translation>
    </message>
    <message>
        <source>How far down the hair it goes</source>
        <translation>Wie weit am Haar hinunter er geht</translation>
    </message>
    <message>
        <source>Blends out over</source>
        <translation>Läuft aus über</translation>
    </message>
    <message>
        <source>The length in which it fades</source>
        <translation>Die Länge, über die er ausläuft</translation>
    </message>
    <message>
        <source>How much of the colour shows</source>
        <translation>Wie viel der Farbe sich zeigt</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>100 is the typed colour, 0 nothing; as a test strand showed</source>
        <translation>100 ist die eingetragene Farbe, 0 nichts; wie eine Probesträhne es zeigte</translation>
    </message>
    <message>
        <source>Add the root shadow</source>
        <translation>Ansatzschatten hinzufügen</translation>
    </message>
    <message>
        <source>Into the plan, with what is typed above; one undo takes it back</source>
        <translation>In den Plan, mit dem oben Eingetragenen; einmal Rückgängig nimmt es zurück</translation>
    </message>
    <message>
        <source>%1: deepened to level %2</source>
        <translation>%1: auf Tonhöhe %2 abgedunkelt</translation>
    </message>
    <message>
        <source>%1: light, level %2</source>
        <translation>%1: hell, Tonhöhe %2</translation>
    </message>
    <message>
        <source>Deepening does not lighten: %1. Typed: %2; right would be %3.</source>
        <translation>Abdunkeln hellt nicht auf: %1. Eingetragen: %2; richtig wäre %3.</translation>
    </message>
    <message>
        <source>Deepen %1 pieces</source>
        <translation>%1 Strähnen abdunkeln</translation>
    </message>
    <message>
        <source>Deepened: %1 pieces, to level %2. Look at it on the heads; undo takes it back.</source>
        <translation>Abgedunkelt: %1 Strähnen, auf Tonhöhe %2. Auf den Köpfen ansehen; Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>Leave out %1 pieces</source>
        <translation>%1 Strähnen auslassen</translation>
    </message>
    <message>
        <source>Left out from now on: %1 pieces. The hair of today stays as it is; undo takes it back.</source>
        <translation>Von jetzt an ausgelassen: %1 Strähnen. Das Haar von heute bleibt, wie es ist; Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>Add a root shadow: %1</source>
        <translation>Ansatzschatten hinzufügen: %1</translation>
    </message>
    <message>
        <source>A root shadow is in the plan: %1. Look at it on the heads; undo takes it back.</source>
        <translation>Ein Ansatzschatten ist im Plan: %1. Auf den Köpfen ansehen; Rückgängig nimmt ihn zurück.</translation>
    </message>
    <message>
        <source>not typed</source>
        <translation>keine Angabe</translation>
    </message>
</context>
<context>
    <name>combdraft::appointment::FinishField</name>
    <message>
        <source>%1: finishes at level</source>
        <translation>%1: endet bei Tonhöhe</translation>
    </message>
    <message>
        <source>not typed</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>The level that your toner is to leave; never lighter than the hair</source>
        <translation>Die Tonhöhe, die Ihr Toner hinterlassen soll; nie heller als das Haar</translation>
    </message>
    <message>
        <source>no tone</source>
        <translation>keine Farbrichtung</translation>
    </message>
    <message>
        <source>%1: tone</source>
        <translation>%1: Farbrichtung</translation>
    </message>
    <message>
        <source>The tone that your toner is to leave</source>
        <translation>Die Farbrichtung, die Ihr Toner hinterlassen soll</translation>
    </message>
</context>
<context>
    <name>combdraft::appointment::LogView</name>
    <message>
        <source>Pieces in their order</source>
        <translation>Strähnen in ihrer Reihenfolge</translation>
    </message>
    <message>
        <source>A tap counts for</source>
        <translation>Ein Eintrag gilt für</translation>
    </message>
    <message>
        <source>This piece</source>
        <translation>Diese Strähne</translation>
    </message>
    <message>
        <source>Its foil</source>
        <translation>Ihre Folie</translation>
    </message>
    <message>
        <source>All pieces in the same foil</source>
        <translation>Alle Strähnen in derselben Folie</translation>
    </message>
    <message>
        <source>Its section</source>
        <translation>Ihre Abteilung</translation>
    </message>
    <message>
        <source>All pieces of the section that the tap fits</source>
        <translation>Alle Strähnen der Abteilung, zu denen der Eintrag passt</translation>
    </message>
    <message>
        <source>Placed</source>
        <translation>Aufgetragen</translation>
    </message>
    <message>
        <source>The chosen piece is in; the next one is chosen</source>
        <translation>Die gewählte Strähne ist eingelegt; die nächste wird gewählt</translation>
    </message>
    <message>
        <source>Which formula was mixed</source>
        <translation>Welche Rezeptur angemischt wurde</translation>
    </message>
    <message>
        <source>Bowl mixed</source>
        <translation>Schale angemischt</translation>
    </message>
    <message>
        <source>A new bowl of this formula, from now</source>
        <translation>Eine neue Schale dieser Rezeptur, ab jetzt</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Tonhöhe</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht beurteilt</translation>
    </message>
    <message>
        <source>The level that you see now; arrow keys change it by half a level</source>
        <translation>Die Tonhöhe, die Sie jetzt sehen; Pfeiltasten ändern sie um eine halbe</translation>
    </message>
    <message>
        <source>Remaining pigment seen</source>
        <translation>Gesehenes Restpigment</translation>
    </message>
    <message>
        <source>pigment seen</source>
        <translation>gesehenes Pigment</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rot</translation>
    </message>
    <message>
        <source>red orange</source>
        <translation>rotorange</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>orange</translation>
    </message>
    <message>
        <source>gold orange</source>
        <translation>goldorange</translation>
    </message>
    <message>
        <source>gold</source>
        <translation>gold</translation>
    </message>
    <message>
        <source>deep yellow</source>
        <translation>sattgelb</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>gelb</translation>
    </message>
    <message>
        <source>pale yellow</source>
        <translation>blassgelb</translation>
    </message>
    <message>
        <source>Looked</source>
        <translation>Angesehen</translation>
    </message>
    <message>
        <source>Opened, wiped and looked: with the level and pigment above, if judged</source>
        <translation>Geöffnet, abgewischt und angesehen: mit Tonhöhe und Pigment von oben, falls beurteilt</translation>
    </message>
    <message>
        <source>Taken out</source>
        <translation>Herausgenommen</translation>
    </message>
    <message>
        <source>Product or foil is off this hair</source>
        <translation>Produkt oder Folie ist von diesem Haar herunter</translation>
    </message>
    <message>
        <source>Rinsed</source>
        <translation>Ausgespült</translation>
    </message>
    <message>
        <source>This hair is rinsed</source>
        <translation>Dieses Haar ist ausgespült</translation>
    </message>
    <message>
        <source>Take back the last tap</source>
        <translation>Letzten Eintrag zurücknehmen</translation>
    </message>
    <message>
        <source>It counts no more; it stays in the log, marked</source>
        <translation>Er zählt nicht mehr; er bleibt gekennzeichnet im Protokoll</translation>
    </message>
    <message>
        <source>who taps: initials</source>
        <translation>wer einträgt: Kürzel</translation>
    </message>
    <message>
        <source>Who taps</source>
        <translation>Wer einträgt</translation>
    </message>
    <message>
        <source>Look at these first</source>
        <translation>Diese zuerst ansehen</translation>
    </message>
    <message>
        <source>Bowls</source>
        <translation>Schalen</translation>
    </message>
    <message>
        <source>Last taps</source>
        <translation>Letzte Einträge</translation>
    </message>
    <message>
        <source>Odd in the log</source>
        <translation>Auffälliges im Protokoll</translation>
    </message>
    <message>
        <source>Taps cannot be noted in this plan: its log cannot be read, and is kept as it is. Write times on paper. %1</source>
        <translation>In diesem Plan lassen sich keine Einträge machen: Sein Protokoll ist nicht lesbar und bleibt, wie es ist. Zeiten auf Papier notieren. %1</translation>
    </message>
    <message>
        <source>%1: %2 on the hair; %3</source>
        <translation>%1: %2 auf dem Haar; %3</translation>
    </message>
    <message>
        <source>%1: rinsed</source>
        <translation>%1: ausgespült</translation>
    </message>
    <message>
        <source>%1; level %2 seen</source>
        <translation>%1; Tonhöhe %2 gesehen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: bowl %2</source>
        <translation>%1: Schale %2</translation>
    </message>
    <message>
        <source>%1, mixed; how long it may be used is not typed from its leaflet</source>
        <translation>%1, angemischt; wie lange sie verwendet werden darf, ist nicht aus der Gebrauchsanweisung eingetragen</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>nothing is on the hair</source>
        <translation>nichts ist auf dem Haar</translation>
    </message>
    <message>
        <source>none mixed yet</source>
        <translation>noch keine angemischt</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keine</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1: placed at %2; look</source>
        <translation>%1: aufgetragen um %2; ansehen</translation>
    </message>
    <message>
        <source>%1: placed at %2; taken out, not rinsed</source>
        <translation>%1: aufgetragen um %2; herausgenommen, nicht ausgespült</translation>
    </message>
    <message>
        <source>Begin a new log</source>
        <translation>Neues Protokoll beginnen</translation>
    </message>
    <message>
        <source>For another visit with this plan: the taps until now stay in the log and count no more</source>
        <translation>Für einen anderen Besuch mit diesem Plan: die Einträge bis jetzt bleiben im Protokoll und zählen nicht mehr</translation>
    </message>
    <message>
        <source>This screen may go dark by itself: the computer could not be asked to keep it on. Set it to stay on, and plug it in, before you mix.</source>
        <translation>Dieser Bildschirm kann von selbst dunkel werden: Der Rechner konnte nicht gebeten werden, ihn anzulassen. Vor dem Anmischen einstellen, dass er anbleibt, und den Rechner an den Strom anschließen.</translation>
    </message>
    <message>
        <source>An appointment log is open</source>
        <translation>Ein Terminprotokoll ist offen</translation>
    </message>
    <message>
        <source>%1, %2 old, of %3 typed from its leaflet</source>
        <translation>%1, %2 alt, von %3 laut Eingabe aus der Gebrauchsanweisung</translation>
    </message>
    <message>
        <source>A second touch in less than half a second was not counted.</source>
        <translation>Eine zweite Berührung in weniger als einer halben Sekunde wurde nicht gezählt.</translation>
    </message>
    <message>
        <source>Not noted: this plan may only be read. Write the time on paper, then go on where the plan is open, or change it here anyway. What was typed here stays.</source>
        <translation>Nicht eingetragen: Dieser Plan darf nur gelesen werden. Die Zeit auf Papier notieren, dann dort weitermachen, wo der Plan offen ist, oder ihn hier trotzdem ändern. Was hier eingegeben wurde, bleibt.</translation>
    </message>
    <message>
        <source>A new log is begun; the taps before it stay in the plan.</source>
        <translation>Ein neues Protokoll ist begonnen; die Einträge davor bleiben im Plan.</translation>
    </message>
    <message>
        <source>This log began on %1, and not all of its pieces were tapped as rinsed. For another visit begin a new log.</source>
        <translation>Dieses Protokoll begann am %1, und nicht alle seine Strähnen sind als ausgespült eingetragen. Für einen anderen Besuch ein neues Protokoll beginnen.</translation>
    </message>
    <message>
        <source>This log began on %1. For another visit begin a new log.</source>
        <translation>Dieses Protokoll begann am %1. Für einen anderen Besuch ein neues Protokoll beginnen.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>bowl of %1</source>
        <translation>Schale von %1</translation>
    </message>
    <message>
        <source>placed at %1</source>
        <translation>aufgetragen um %1</translation>
    </message>
    <message>
        <source>The last tap is on this screen only; the disk may be full. If the program or the battery stops, it is lost. It is tried again: write times on paper until this line goes, or save the plan elsewhere.</source>
        <translation>Der letzte Eintrag steht nur auf diesem Bildschirm; vielleicht ist der Speicher voll. Endet das Programm oder der Akku, ist er weg. Es wird weiter versucht: Zeiten auf Papier notieren, bis diese Zeile verschwindet, oder den Plan anderswo speichern.</translation>
    </message>
    <message>
        <source>%1, %2 old: longer than it may be used as typed from its leaflet. See the leaflet.</source>
        <translation>%1, %2 alt: länger, als sie laut Eingabe aus der Gebrauchsanweisung verwendet werden darf. Dort nachsehen.</translation>
    </message>
    <message>
        <source>This log holds %1 taps, and more are not kept in one plan. Note further times on paper.</source>
        <translation>Dieses Protokoll enthält %1 Einträge, und mehr werden in einem Plan nicht aufbewahrt. Weitere Zeiten bitte auf Papier notieren.</translation>
    </message>
    <message>
        <source>Take back this piece&apos;s last tap</source>
        <translation>Letzten Eintrag dieser Strähne zurücknehmen</translation>
    </message>
    <message>
        <source>Of the chosen piece, whatever was tapped since: for a rinse tapped by mistake, whose time then counts on</source>
        <translation>Von der gewählten Strähne, was auch seither eingetragen wurde: für ein versehentlich eingetragenes Ausspülen; ihre Zeit zählt dann weiter</translation>
    </message>
    <message>
        <source>and %1 more on the hair: see the list</source>
        <translation>und %1 weitere auf dem Haar: siehe Liste</translation>
    </message>
    <message>
        <source>The clock of this computer stands %1 min before the last tap: times on the hair may be too short by that and more. Look at a clock and at the hair.</source>
        <translation>Die Uhr dieses Rechners steht %1 min vor dem letzten Eintrag: Zeiten auf dem Haar können um so viel und mehr zu kurz sein. Auf eine Uhr und auf das Haar sehen.</translation>
    </message>
    <message>
        <source>Not noted: no piece is chosen. Choose one in the list.</source>
        <translation>Nicht eingetragen: Keine Strähne ist gewählt. Eine in der Liste wählen.</translation>
    </message>
    <message>
        <source>Since the tap of %1 this computer was started anew, or another one noted the taps. Its clock says %2: compare with another clock; if they differ, go by the hair and by that clock.</source>
        <translation>Seit dem Eintrag von %1 wurde dieser Rechner neu gestartet, oder ein anderer hat die Einträge gemacht. Seine Uhr zeigt %2: mit einer anderen Uhr vergleichen; weichen sie ab, nach dem Haar und der anderen Uhr gehen.</translation>
    </message>
    <message>
        <source>Not noted: this plan has no room left. Write times on paper from now on. What was typed here stays.</source>
        <translation>Nicht eingetragen: Dieser Plan hat keinen Platz mehr. Zeiten von jetzt an auf Papier notieren. Was hier eingegeben wurde, bleibt.</translation>
    </message>
</context>
<context>
    <name>combdraft::appointment::NextVisitView</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Hair that is still left out, over three visits like this one</source>
        <translation>Haar, das noch ausgelassen ist, über drei Besuche wie diesen</translation>
    </message>
    <message>
        <source>Hair that is still left out</source>
        <translation>Haar, das noch ausgelassen ist</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>this visit</source>
        <translation>dieser Besuch</translation>
    </message>
    <message>
        <source>What shows by then</source>
        <translation>Was sich bis dahin zeigt</translation>
    </message>
    <message>
        <source>Weeks until then</source>
        <translation>Wochen bis dahin</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>Wochen</translation>
    </message>
    <message>
        <source>not typed</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>As you and the client agreed; typed by you</source>
        <translation>Wie gemeinsam vereinbart; von Ihnen eingetragen</translation>
    </message>
    <message>
        <source>Show from</source>
        <translation>Zeigen ab</translation>
    </message>
    <message>
        <source>A piece whose light begins farther off the scalp than this is repeated</source>
        <translation>Eine Strähne, deren Helles weiter über der Kopfhaut beginnt als hier, wird wiederholt</translation>
    </message>
    <message>
        <source>Pieces to repeat and to leave</source>
        <translation>Strähnen zum Wiederholen und zum Lassen</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>Strähne</translation>
    </message>
    <message>
        <source>light begins at, by then</source>
        <translation>Helles beginnt dann bei</translation>
    </message>
    <message>
        <source>next time</source>
        <translation>nächstes Mal</translation>
    </message>
    <message>
        <source>Begin the next visit&apos;s plan</source>
        <translation>Den Plan des nächsten Besuchs beginnen</translation>
    </message>
    <message>
        <source>A new plan that is not saved yet: hair grown out with today&apos;s light in it; today&apos;s plan stays as it is</source>
        <translation>Ein neuer Plan, der noch nicht gespeichert ist: nachgewachsenes Haar mit dem Hellen von heute darin; der Plan von heute bleibt, wie er ist</translation>
    </message>
    <message>
        <source>Two weeks later</source>
        <translation>Zwei Wochen später</translation>
    </message>
    <message>
        <source>The client&apos;s words, what to change</source>
        <translation>Rückmeldung und was zu ändern ist</translation>
    </message>
    <message>
        <source>nothing written yet</source>
        <translation>noch nichts geschrieben</translation>
    </message>
    <message>
        <source>Open the consultation card</source>
        <translation>Die Beratungskarte öffnen</translation>
    </message>
    <message>
        <source>Where a client is begun and a visit with this plan is added</source>
        <translation>Wo eine Kundenakte angelegt und ein Besuch mit diesem Plan hinzugefügt wird</translation>
    </message>
    <message>
        <source>No piece is lightened in this choice, so that nothing grows out.</source>
        <translation>In dieser Variante wird keine Strähne aufgehellt, also wächst nichts heraus.</translation>
    </message>
    <message>
        <source>Type the weeks and from where on a grown-out start is to be repeated. Growth goes by the assumptions: %1 mm a week.</source>
        <translation>Eintragen, wie viele Wochen und ab wo ein herausgewachsener Beginn zu wiederholen ist. Wachstum nach den Annahmen: %1 mm in der Woche.</translation>
    </message>
    <message>
        <source>repeat</source>
        <translation>wiederholen</translation>
    </message>
    <message>
        <source>leave</source>
        <translation>lassen</translation>
    </message>
    <message>
        <source>The head&apos;s measures do not fit together; look at the head card.</source>
        <translation>Die Maße des Kopfs passen nicht zusammen; auf der Kopfkarte nachsehen.</translation>
    </message>
    <message>
        <source>What the client says is kept with the client, not in the plan. No visit with this plan is written down yet: begin on the consultation card, under Visits.</source>
        <translation>Rückmeldungen stehen in der Kundenakte, nicht im Plan. Noch ist kein Besuch mit diesem Plan notiert: auf der Beratungskarte beginnen, unter Besuche.</translation>
    </message>
    <message>
        <source>Kept with the client, as the words of the visit on %1.</source>
        <translation>In der Kundenakte aufbewahrt, als Text zum Besuch vom %1.</translation>
    </message>
    <message>
        <source>no day</source>
        <translation>kein Tag</translation>
    </message>
    <message>
        <source>%1, next visit</source>
        <translation>%1, nächster Besuch</translation>
    </message>
    <message>
        <source>Stop pieces where their old light begins</source>
        <translation>Strähnen dort enden lassen, wo ihr altes helles Haar beginnt</translation>
    </message>
    <message>
        <source>Test and look again before each visit: hair that was lightened is other hair than before. Product that runs over it can break it: find the old line on each strand, it is seldom where growth alone would put it, and go by the maker&apos;s directions for hair that is light already.</source>
        <translation>Vor jedem Besuch neu testen und ansehen: aufgehelltes Haar ist anderes Haar als vorher. Produkt, das darüber läuft, kann es brechen lassen: die alte Grenze an jeder Strähne suchen, sie liegt selten dort, wo das Wachstum allein sie hinlegt, und den Angaben des Herstellers für schon helles Haar folgen.</translation>
    </message>
    <message>
        <source>not placed this time</source>
        <translation>diesmal nicht aufgetragen</translation>
    </message>
    <message>
        <source>%1 pieces were not tapped as placed: they made nothing light and stay in the next plan.</source>
        <translation>%1 Strähnen sind nicht als aufgetragen eingetragen: sie haben nichts hell gemacht und bleiben im nächsten Plan.</translation>
    </message>
    <message>
        <source>In the next plan a repeated piece ends at its grown-out start, in the place of a stop that it has, so that what is light already gets no product</source>
        <translation>Im nächsten Plan endet eine wiederholte Strähne an ihrem herausgewachsenen Beginn, anstelle eines Endes, das sie hat, damit schon helles Haar kein Produkt bekommt</translation>
    </message>
    <message>
        <source>three,
same pieces</source>
        <translation>drei,
gleiche Strähnen</translation>
    </message>
    <message>
        <source>two,
anywhere</source>
        <translation>zwei,
irgendwo</translation>
    </message>
    <message>
        <source>three,
anywhere</source>
        <translation>drei,
irgendwo</translation>
    </message>
    <message>
        <source>%1 to repeat, %2 to leave. Growth goes by the assumptions: %3 mm a week.</source>
        <translation>%1 zu wiederholen, %2 zu lassen. Das Wachstum geht nach den Annahmen: %3 mm in der Woche.</translation>
    </message>
    <message>
        <source>Counted are this placement&apos;s pieces; hair that was light before is not in it. If exactly the same hair were taken again, the rest would stay left out. No hand finds every hair again, so part of it goes at each visit; pieces that fall anywhere use it up fastest, and contrast goes with it.</source>
        <translation>Gezählt sind die Strähnen dieser Platzierung; Haar, das schon vorher hell war, ist nicht darin. Würde genau dasselbe Haar wieder genommen, bliebe der Rest ausgelassen. Keine Hand findet jedes Haar wieder, also geht bei jedem Besuch etwas davon verloren; Strähnen, die irgendwohin fallen, verbrauchen es am schnellsten, und mit ihm den Kontrast.</translation>
    </message>
    <message>
        <source>The hair of the pieces is being counted; the shares of each zone follow.</source>
        <translation>Das Haar der Strähnen wird gezählt; die Anteile jeder Zone folgen.</translation>
    </message>
    <message>
        <source>The hair could not be counted: %1</source>
        <translation>Das Haar ließ sich nicht zählen: %1</translation>
    </message>
</context>
<context>
    <name>combdraft::appointment::OutcomeView</name>
    <message>
        <source>Planned and got, piece by piece</source>
        <translation>Geplant und erreicht, Strähne für Strähne</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>Strähne</translation>
    </message>
    <message>
        <source>planned level</source>
        <translation>geplante Tonhöhe</translation>
    </message>
    <message>
        <source>level that came</source>
        <translation>Tonhöhe, die herauskam</translation>
    </message>
    <message>
        <source>typed span</source>
        <translation>eingetragene Spanne</translation>
    </message>
    <message>
        <source>What was used on this head</source>
        <translation>Was an diesem Kopf verbraucht wurde</translation>
    </message>
    <message>
        <source>Mixed in all</source>
        <translation>Insgesamt angemischt</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>All bowls together, weighed</source>
        <translation>Alle Schalen zusammen, gewogen</translation>
    </message>
    <message>
        <source>Left in the bowls</source>
        <translation>Rest in den Schalen</translation>
    </message>
    <message>
        <source>What was not put on, weighed</source>
        <translation>Was nicht aufgetragen wurde, gewogen</translation>
    </message>
    <message>
        <source>Pushed back in fact</source>
        <translation>Tatsächlich zurückgeschoben</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>How much of the taken hair the comb pushed back</source>
        <translation>Wie viel des genommenen Haars der Kamm zurückgeschoben hat</translation>
    </message>
    <message>
        <source>What this head gives</source>
        <translation>Was dieser Kopf ergibt</translation>
    </message>
    <message>
        <source>Take these over into my own factors</source>
        <translation>In meine eigenen Faktoren übernehmen</translation>
    </message>
    <message>
        <source>Nothing is taken over without this tick; it is asked for each head</source>
        <translation>Ohne dieses Häkchen wird nichts übernommen; es wird bei jedem Kopf gefragt</translation>
    </message>
    <message>
        <source>Take them over</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>This head counts from now on, on this computer only</source>
        <translation>Dieser Kopf zählt von jetzt an, nur auf diesem Rechner</translation>
    </message>
    <message>
        <source>My own factors</source>
        <translation>Meine eigenen Faktoren</translation>
    </message>
    <message>
        <source>Take the last head away again</source>
        <translation>Den letzten Kopf wieder wegnehmen</translation>
    </message>
    <message>
        <source>The factors are then as before that head was taken over</source>
        <translation>Die Faktoren sind dann wie vor der Übernahme dieses Kopfs</translation>
    </message>
    <message>
        <source>How long product stays on the hair and how far hair lifts are never learned from heads: that is seen, strand by strand.</source>
        <translation>Wie lange Produkt auf dem Haar bleibt und wie weit Haar aufhellt, wird nie aus Köpfen gelernt: Das ist zu sehen, Strähne für Strähne.</translation>
    </message>
    <message>
        <source>None yet: the work list goes by the assumptions.</source>
        <translation>Noch keine: Die Arbeitsliste geht nach den Annahmen.</translation>
    </message>
    <message>
        <source>The appointment log in this plan cannot be read and is kept as it is. %1</source>
        <translation>Das Protokoll des Termins in diesem Plan ist nicht lesbar und bleibt, wie es ist. %1</translation>
    </message>
    <message>
        <source>Levels as last tapped in the log, beside what each piece was to lift to.</source>
        <translation>Tonhöhen, wie zuletzt im Protokoll eingetragen, neben dem, worauf jede Strähne aufhellen sollte.</translation>
    </message>
    <message>
        <source>taken over by a finish; undo shows the plan</source>
        <translation>durch einen Endton übernommen; Rückgängig zeigt den Plan</translation>
    </message>
    <message>
        <source>inside %1 to %2</source>
        <translation>innerhalb %1 bis %2</translation>
    </message>
    <message>
        <source>outside %1 to %2</source>
        <translation>außerhalb %1 bis %2</translation>
    </message>
    <message>
        <source>Speed: the log has fewer than three steps from one placed tap to the next by the same person.</source>
        <translation>Tempo: Das Protokoll hat weniger als drei Schritte von einem Eintrag „aufgetragen“ zum nächsten derselben Person.</translation>
    </message>
    <message>
        <source>Product: no piece was tapped as placed, so that no hair under product is counted.</source>
        <translation>Produkt: Keine Strähne ist als aufgetragen eingetragen, darum ist kein Haar unter Produkt gezählt.</translation>
    </message>
    <message>
        <source>Hair under product, of the pieces that were placed: %1 g by the head&apos;s model.</source>
        <translation>Haar unter Produkt, der aufgetragenen Strähnen: %1 g nach dem Kopfmodell.</translation>
    </message>
    <message>
        <source>Product: %1 g; right would be %2.</source>
        <translation>Produkt: %1 g; richtig wäre %2.</translation>
    </message>
    <message>
        <source>This head stands in your factors already.</source>
        <translation>Dieser Kopf steht schon in Ihren Faktoren.</translation>
    </message>
    <message>
        <source>Not taken over: %1 was found; right would be %2. Look at what was typed and tapped.</source>
        <translation>Nicht übernommen: Gefunden wurde %1; richtig wäre %2. Sehen Sie an, was hier und im Protokoll eingetragen wurde.</translation>
    </message>
    <message>
        <source>Taken over. The work list can go by your own factors now.</source>
        <translation>Übernommen. Die Arbeitsliste kann jetzt nach Ihren eigenen Faktoren gehen.</translation>
    </message>
    <message>
        <source>The head of %1 counts no more.</source>
        <translation>Der Kopf vom %1 zählt nicht mehr.</translation>
    </message>
    <message>
        <source>not typed</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>No level was tapped after a rinse yet. With product on, hair looks lighter than it is: in the log tap Rinsed, look at clean, dry hair, type the level and tap Looked.</source>
        <translation>Nach dem Ausspülen wurde noch keine Tonhöhe eingetragen. Mit Produkt sieht Haar heller aus, als es ist: im Protokoll „Ausgespült“ antippen, sauberes, trockenes Haar ansehen, die Tonhöhe eintragen und „Angesehen“ antippen.</translation>
    </message>
    <message>
        <source>The backcombed pieces of this choice are then planned with the share that your own comb pushes back; one undo takes it back</source>
        <translation>Die toupierten Strähnen dieser Variante sind dann mit dem Anteil geplant, den Ihr eigener Kamm zurückschiebt; ein Rückgängig nimmt es zurück</translation>
    </message>
    <message>
        <source>Plan the backcombed pieces with %1 % pushed back</source>
        <translation>Die toupierten Strähnen mit %1 % zurückgeschoben planen</translation>
    </message>
    <message>
        <source>Plan with your own pushed share</source>
        <translation>Mit dem eigenen zurückgeschobenen Anteil planen</translation>
    </message>
    <message>
        <source>The backcombed pieces are planned with it. Look at them on the heads; undo takes it back.</source>
        <translation>Die toupierten Strähnen sind damit geplant. An den Köpfen ansehen; Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>They are planned with it already.</source>
        <translation>Sie sind schon damit geplant.</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Product: the hair of the placed pieces is being counted.</source>
        <translation>Produkt: das Haar der aufgetragenen Strähnen wird gezählt.</translation>
    </message>
    <message>
        <source>Product: the hair of the placed pieces could not be counted: %1</source>
        <translation>Produkt: das Haar der aufgetragenen Strähnen ließ sich nicht zählen: %1</translation>
    </message>
    <message>
        <source>Not kept. %1</source>
        <translation>Nicht aufbewahrt. %1</translation>
    </message>
</context>
<context>
    <name>combdraft::appointment::TimelineStrip</name>
    <message>
        <source>Appointment in minutes</source>
        <translation>Termin in Minuten</translation>
    </message>
    <message>
        <source>oldest on the hair: %1, %2 min</source>
        <translation>am längsten auf dem Haar: %1, %2 min</translation>
    </message>
    <message>
        <source>nothing is on the hair yet</source>
        <translation>noch ist nichts auf dem Haar</translation>
    </message>
    <message>
        <source>oldest product in use: %1, %2 min</source>
        <translation>ältestes Produkt in Gebrauch: %1, %2 min</translation>
    </message>
    <message>
        <source>no bowl is in use</source>
        <translation>keine Schale ist in Gebrauch</translation>
    </message>
    <message>
        <source>At %1 min: %2; %3.</source>
        <translation>Bei %1 min: %2; %3.</translation>
    </message>
</context>
<context>
    <name>combdraft::appointment::WorkListView</name>
    <message>
        <source>Above: filled mixes, hatched places (each formula with its hatch of the sheet), white backcombs, dashed looks or is in reserve. Below: the bowls.</source>
        <translation>Oben: Gefüllt wird angemischt, schraffiert aufgetragen (jede Rezeptur mit ihrer Schraffur vom Kopfblatt), weiß toupiert, gestrichelt angesehen oder Reserve. Unten: die Schalen.</translation>
    </message>
    <message>
        <source>Steps of the appointment</source>
        <translation>Schritte des Termins</translation>
    </message>
    <message>
        <source>from, min</source>
        <translation>ab, min</translation>
    </message>
    <message>
        <source>hands</source>
        <translation>Hände</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>foil</source>
        <translation>Folie</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <source>As numbered</source>
        <translation>Wie nummeriert</translation>
    </message>
    <message>
        <source>The order of the numbers on the sheet</source>
        <translation>Die Reihenfolge der Nummern auf dem Kopfblatt</translation>
    </message>
    <message>
        <source>By rule</source>
        <translation>Nach Regel</translation>
    </message>
    <message>
        <source>Slow hair first, fine hair at the front hairline last</source>
        <translation>Langsames Haar zuerst, feines Haar an der vorderen Haarlinie zuletzt</translation>
    </message>
    <message>
        <source>Number the pieces so</source>
        <translation>Die Strähnen so nummerieren</translation>
    </message>
    <message>
        <source>Gives the pieces this order on the sheet; one undo takes it back</source>
        <translation>Gibt den Strähnen auf dem Kopfblatt diese Reihenfolge; einmal Rückgängig nimmt es zurück</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Hände</translation>
    </message>
    <message>
        <source>One pair of hands</source>
        <translation>Ein Paar Hände</translation>
    </message>
    <message>
        <source>Two</source>
        <translation>Zwei</translation>
    </message>
    <message>
        <source>Two people place at the same time</source>
        <translation>Zwei Personen tragen gleichzeitig auf</translation>
    </message>
    <message>
        <source>Your foil widths, mm</source>
        <translation>Ihre Folienbreiten, mm</translation>
    </message>
    <message>
        <source>none typed: counted only</source>
        <translation>keine Angabe: nur gezählt</translation>
    </message>
    <message>
        <source>With commas; each piece gets the narrowest that is wide enough</source>
        <translation>Mit Kommas; jede Strähne bekommt die schmalste, die breit genug ist</translation>
    </message>
    <message>
        <source>Widths of %1 to %2 mm with commas between.</source>
        <translation>Breiten von %1 bis %2 mm mit Kommas dazwischen.</translation>
    </message>
    <message>
        <source>Look every</source>
        <translation>Ansehen alle</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>Speeds and amounts that you took over from your own heads; what is typed under Assumptions of this plan still comes first</source>
        <translation>Tempo und Mengen, die Sie von Ihren eigenen Köpfen übernommen haben; was unter Annahmen dieses Plans eingetragen ist, geht weiter vor</translation>
    </message>
    <message>
        <source>Bowls</source>
        <translation>Schalen</translation>
    </message>
    <message>
        <source>Foils and hair</source>
        <translation>Folien und Haar</translation>
    </message>
    <message>
        <source>By my own factors (no head yet)</source>
        <translation>Nach meinen eigenen Faktoren (noch kein Kopf)</translation>
    </message>
    <message>
        <source>By my own factors (1 head)</source>
        <translation>Nach meinen eigenen Faktoren (1 Kopf)</translation>
    </message>
    <message>
        <source>By my own factors (%1 heads)</source>
        <translation>Nach meinen eigenen Faktoren (%1 Köpfe)</translation>
    </message>
    <message>
        <source>At your own rates: %1 for %2. The time on the hair and the reserve are not in it; what you ask for is yours to say.</source>
        <translation>Nach Ihren eigenen Sätzen: %1 für %2. Die Zeit auf dem Haar und die Reserve sind nicht darin; was Sie verlangen, bestimmen Sie.</translation>
    </message>
    <message>
        <source>No piece is lightened or deepened yet. Draw pieces on the sheet; their order, foils and bowls then stand here.</source>
        <translation>Noch wird keine Strähne aufgehellt oder abgedunkelt. Strähnen auf dem Kopfblatt zeichnen; dann stehen hier ihre Reihenfolge, Folien und Schalen.</translation>
    </message>
    <message>
        <source>The head&apos;s measures do not fit together; look at the head card.</source>
        <translation>Die Maße des Kopfs passen nicht zusammen; auf der Kopfkarte nachsehen.</translation>
    </message>
    <message>
        <source>%1, at %2 min, %3 pieces: %4</source>
        <translation>%1, bei %2 min, %3 Strähnen: %4</translation>
    </message>
    <message>
        <source>%1 foils of %2 mm</source>
        <translation>%1 Folien von %2 mm</translation>
    </message>
    <message>
        <source>%1 foils</source>
        <translation>%1 Folien</translation>
    </message>
    <message>
        <source>%1 foils that no width of yours is wide enough for</source>
        <translation>%1 Folien, für die keine Ihrer Breiten breit genug ist</translation>
    </message>
    <message>
        <source>%1 films</source>
        <translation>%1 Klarsichtfolien</translation>
    </message>
    <message>
        <source>%1 pieces in open air</source>
        <translation>%1 Strähnen offen an der Luft</translation>
    </message>
    <message>
        <source>%1 hairs, %2 g of hair taken</source>
        <translation>%1 Haare, %2 g Haar genommen</translation>
    </message>
    <message>
        <source>nothing of half a minute or more</source>
        <translation>nichts von einer halben Minute oder mehr</translation>
    </message>
    <message>
        <source>Number the pieces by pace of hair</source>
        <translation>Strähnen nach dem Tempo des Haars nummerieren</translation>
    </message>
    <message>
        <source>On paper…</source>
        <translation>Auf Papier…</translation>
    </message>
    <message>
        <source>The list as pages, to print or to save</source>
        <translation>Die Liste als Seiten, zum Drucken oder Speichern</translation>
    </message>
    <message>
        <source>%1 pieces; the last is in after %2 min, work in all %3 min and %4 min in reserve, by the assumptions or, where ticked, your own factors. How long the product stays on the hair is not in it: that is seen, not planned.</source>
        <translation>%1 Strähnen; die letzte sitzt nach %2 min, Arbeit insgesamt %3 min und %4 min Reserve, nach den Annahmen oder, wo angehakt, Ihren eigenen Faktoren. Wie lange das Produkt im Haar bleibt, steht nicht darin: das wird gesehen, nicht geplant.</translation>
    </message>
    <message>
        <source>Smallest bowl that I mix</source>
        <translation>Kleinste Schale, die ich mische</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>none typed</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>Bowls that come to less are told</source>
        <translation>Schalen mit weniger werden genannt</translation>
    </message>
    <message>
        <source>Would save time</source>
        <translation>Würde Zeit sparen</translation>
    </message>
    <message>
        <source>not typed</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>A round of looking while placing goes on, as you work; not typed: when the last piece is in</source>
        <translation>Eine Runde des Ansehens, während das Auftragen weitergeht, wie Sie arbeiten; ohne Angabe: wenn die letzte Strähne aufgetragen ist</translation>
    </message>
    <message>
        <source>At your own rates: %1</source>
        <translation>Nach Ihren eigenen Sätzen: %1</translation>
    </message>
    <message>
        <source>The hair could not be counted: %1</source>
        <translation>Das Haar ließ sich nicht zählen: %1</translation>
    </message>
    <message>
        <source>The hair of the pieces is being counted; grams and foils follow.</source>
        <translation>Das Haar der Strähnen wird gezählt; Gramm und Folien folgen.</translation>
    </message>
    <message>
        <source>being counted</source>
        <translation>wird gezählt</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>nicht gezählt</translation>
    </message>
    <message>
        <source>Check before work</source>
        <translation>Vor der Arbeit prüfen</translation>
    </message>
    <message>
        <source>Order, bowls and times</source>
        <translation>Reihenfolge, Schalen und Zeiten</translation>
    </message>
    <message>
        <source>Of hair, skin and product this program found nothing in the plan; look at both hair and scalp all the same, and read the consultation before mixing.</source>
        <translation>Zu Haar, Haut und Produkt hat dieses Programm im Plan nichts gefunden; trotzdem Haar und Kopfhaut ansehen und vor dem Anmischen die Beratung lesen.</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::AssumptionsCard</name>
    <message>
        <source>Assumptions</source>
        <translation>Annahmen</translation>
    </message>
    <message>
        <source>What the look rests on where nobody measured this head. Point at a name to read what it is. A change belongs to this plan and is named on everything that is printed.</source>
        <translation>Worauf der Look beruht, wo niemand diesen Kopf gemessen hat. Auf einen Namen zeigen, um zu lesen, was er bedeutet. Eine Änderung gehört zu diesem Plan und wird auf allem Gedruckten genannt.</translation>
    </message>
    <message>
        <source>Reset all</source>
        <translation>Alle zurücksetzen</translation>
    </message>
    <message>
        <source>All assumptions go back to their defaults</source>
        <translation>Alle Annahmen gehen auf ihre Vorgaben zurück</translation>
    </message>
    <message>
        <source>These move no lightness and no colour, only what is called one tone, a block or worth a look.</source>
        <translation>Diese ändern weder Helligkeit noch Farbe, nur was ein Ton, ein Block oder einen Blick wert heißt.</translation>
    </message>
    <message>
        <source>Reset</source>
        <translation>Zurücksetzen</translation>
    </message>
    <message>
        <source>Reset: %1</source>
        <translation>Zurücksetzen: %1</translation>
    </message>
    <message>
        <source>Back to our default, %1</source>
        <translation>Zurück zu unserer Vorgabe, %1</translation>
    </message>
    <message>
        <source>◆ changed; default %1, %2</source>
        <translation>◆ geändert; Vorgabe %1, %2</translation>
    </message>
    <message>
        <source>default %1, %2</source>
        <translation>Vorgabe %1, %2</translation>
    </message>
    <message>
        <source>All as we set them.</source>
        <translation>Alle, wie wir sie gesetzt haben.</translation>
    </message>
    <message>
        <source>◆ One differs from its default.</source>
        <translation>◆ Eine weicht von ihrer Vorgabe ab.</translation>
    </message>
    <message>
        <source>◆ %1 differ from their defaults.</source>
        <translation>◆ %1 weichen von ihren Vorgaben ab.</translation>
    </message>
    <message>
        <source>Change assumption: %1</source>
        <translation>Annahme ändern: %1</translation>
    </message>
    <message>
        <source>Reset assumption: %1</source>
        <translation>Annahme zurücksetzen: %1</translation>
    </message>
    <message>
        <source>Reset all assumptions</source>
        <translation>Alle Annahmen zurücksetzen</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::ChoicesCard</name>
    <message>
        <source>1 piece</source>
        <translation>1 Strähne</translation>
    </message>
    <message>
        <source>%1 pieces</source>
        <translation>%1 Strähnen</translation>
    </message>
    <message>
        <source>Choice %1</source>
        <translation>Variante %1</translation>
    </message>
    <message>
        <source>Choices</source>
        <translation>Varianten</translation>
    </message>
    <message>
        <source>Each choice is a placement of its own for the same head, hair and formulas. The marked one is worked on, and its look is shown.</source>
        <translation>Jede Variante ist eine eigene Platzierung für denselben Kopf, dasselbe Haar und dieselben Rezepturen. An der markierten wird gearbeitet, ihr Look wird gezeigt.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <source>What this choice is called, here and in print</source>
        <translation>Wie diese Variante heißt, hier und im Druck</translation>
    </message>
    <message>
        <source>A choice needs a name.</source>
        <translation>Eine Variante braucht einen Namen.</translation>
    </message>
    <message>
        <source>Another choice is called that.</source>
        <translation>So heißt schon eine andere Variante.</translation>
    </message>
    <message>
        <source>That is too long.</source>
        <translation>Das ist zu lang.</translation>
    </message>
    <message>
        <source>Rename a choice to %1</source>
        <translation>Eine Variante umbenennen in %1</translation>
    </message>
    <message>
        <source>Copy as new</source>
        <translation>Als neue kopieren</translation>
    </message>
    <message>
        <source>A new choice that begins with all of this one</source>
        <translation>Eine neue Variante, die mit allem aus dieser beginnt</translation>
    </message>
    <message>
        <source>New, empty</source>
        <translation>Neu, leer</translation>
    </message>
    <message>
        <source>A new choice without pieces</source>
        <translation>Eine neue Variante ohne Strähnen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Take this choice and all its pieces off the plan; undo brings them back</source>
        <translation>Diese Variante mit allen Strähnen aus dem Plan nehmen; Rückgängig bringt sie wieder</translation>
    </message>
    <message>
        <source>Compare…</source>
        <translation>Vergleichen…</translation>
    </message>
    <message>
        <source>Two choices side by side, or today and a choice</source>
        <translation>Zwei Varianten nebeneinander, oder heute und eine Variante</translation>
    </message>
    <message>
        <source>Take what is selected</source>
        <translation>Auswahl übernehmen</translation>
    </message>
    <message>
        <source>Into which choice</source>
        <translation>In welche Variante</translation>
    </message>
    <message>
        <source>Take into it</source>
        <translation>Dorthin übernehmen</translation>
    </message>
    <message>
        <source>Copies what is selected to the same places in that choice</source>
        <translation>Kopiert die Auswahl an dieselben Stellen in jener Variante</translation>
    </message>
    <message>
        <source>Suggest a placement…</source>
        <translation>Platzierung vorschlagen…</translation>
    </message>
    <message>
        <source>Searches how the pieces of this choice might come nearer to its aims</source>
        <translation>Sucht, wie die Strähnen dieser Variante ihren Zielen näher kommen könnten</translation>
    </message>
    <message>
        <source>No room for another choice: %1</source>
        <translation>Kein Platz für eine weitere Variante: %1</translation>
    </message>
    <message>
        <source>Copy as a new choice</source>
        <translation>Als neue Variante kopieren</translation>
    </message>
    <message>
        <source>New choice</source>
        <translation>Neue Variante</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>%1 and its %2 are taken off the plan; undo brings them back.</source>
        <translation>%1 und ihre %2 werden aus dem Plan genommen; Rückgängig bringt sie wieder.</translation>
    </message>
    <message>
        <source>Work on %1</source>
        <translation>An %1 arbeiten</translation>
    </message>
    <message>
        <source>%1 has no room for that: %2</source>
        <translation>%1 hat dafür keinen Platz: %2</translation>
    </message>
    <message>
        <source>Take into %1</source>
        <translation>In %1 übernehmen</translation>
    </message>
    <message>
        <source>%1 has %2 more; here they stay as well.</source>
        <translation>%1 hat %2 mehr; hier bleiben sie ebenfalls.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, worked on</source>
        <translation>%1, in Arbeit</translation>
    </message>
    <message>
        <source>A second choice is needed first.</source>
        <translation>Zuerst ist eine zweite Variante nötig.</translation>
    </message>
    <message>
        <source>Copies go to the same places in the other choice; here they stay.</source>
        <translation>Kopien kommen an dieselben Stellen in der anderen Variante; hier bleiben sie.</translation>
    </message>
    <message>
        <source>Select pieces, sections or notes on the sheet first.</source>
        <translation>Zuerst Strähnen, Abteilungen oder Notizen auf dem Kopfblatt wählen.</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::ConfirmRow</name>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::ConsultationCard</name>
    <message>
        <source>Consultation</source>
        <translation>Beratung</translation>
    </message>
    <message>
        <source>Page of the consultation</source>
        <translation>Seite der Beratung</translation>
    </message>
    <message>
        <source>Wishes</source>
        <translation>Wünsche</translation>
    </message>
    <message>
        <source>What the client wants, photos, how it is worn, what it costs</source>
        <translation>Was gewünscht ist, Fotos, wie es getragen wird, was es kostet</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Fragen</translation>
    </message>
    <message>
        <source>Consent, age, past reactions, scalp, history, tests</source>
        <translation>Einverständnis, Alter, frühere Reaktionen, Kopfhaut, Vorgeschichte, Tests</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>Besuche</translation>
    </message>
    <message>
        <source>When the client was here with which plan; notes</source>
        <translation>Welcher Besuch mit welchem Plan; Notizen</translation>
    </message>
    <message>
        <source>Client</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Name or mark, where it is kept, hand over, delete</source>
        <translation>Name oder Zeichen, wo es aufbewahrt wird, aushändigen, löschen</translation>
    </message>
    <message>
        <source>What was agreed stands in the plan and cannot be read.</source>
        <translation>Was vereinbart wurde, steht im Plan und lässt sich nicht lesen.</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::ConsultationClient</name>
    <message>
        <source>visits: %1</source>
        <translation>Besuche: %1</translation>
    </message>
    <message>
        <source>without a name, last %1, %2</source>
        <translation>ohne Namen, zuletzt %1, %2</translation>
    </message>
    <message>
        <source>%1, last %2, %3</source>
        <translation>%1, zuletzt %2, %3</translation>
    </message>
    <message>
        <source>Client</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>First name or mark</source>
        <translation>Vorname oder Zeichen</translation>
    </message>
    <message>
        <source>not typed</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>Only if you need it: a mark of your own does too</source>
        <translation>Nur wenn Sie es brauchen: Ein eigenes Zeichen tut es auch</translation>
    </message>
    <message>
        <source>Contact</source>
        <translation>Kontakt</translation>
    </message>
    <message>
        <source>only if you need it</source>
        <translation>nur wenn Sie es brauchen</translation>
    </message>
    <message>
        <source>Where it is kept</source>
        <translation>Wo es aufbewahrt wird</translation>
    </message>
    <message>
        <source>Hand over, delete</source>
        <translation>Aushändigen, löschen</translation>
    </message>
    <message>
        <source>Hand over what is kept…</source>
        <translation>Aushändigen, was aufbewahrt wird…</translation>
    </message>
    <message>
        <source>A folder that the client can read: text, JSON and photos, with the day of consent</source>
        <translation>Ein lesbarer Ordner zum Mitgeben: Text, JSON und Fotos, mit dem Tag des Einverständnisses</translation>
    </message>
    <message>
        <source>Delete this client</source>
        <translation>Diese Kundenakte löschen</translation>
    </message>
    <message>
        <source>The plan files stay.</source>
        <translation>Die Plandateien bleiben.</translation>
    </message>
    <message>
        <source>Delete for good</source>
        <translation>Endgültig löschen</translation>
    </message>
    <message>
        <source>Delete this client and the plan</source>
        <translation>Diese Kundenakte und den Plan löschen</translation>
    </message>
    <message>
        <source>The plan that is open goes too.</source>
        <translation>Der geöffnete Plan verschwindet auch.</translation>
    </message>
    <message>
        <source>Delete both for good</source>
        <translation>Beide endgültig löschen</translation>
    </message>
    <message>
        <source>Here before?</source>
        <translation>Schon einmal hier?</translation>
    </message>
    <message>
        <source>Was this client here with another plan, the visits belong together.</source>
        <translation>War diese Person mit einem anderen Plan hier, gehören die Besuche zusammen.</translation>
    </message>
    <message>
        <source>Show the clients to choose from</source>
        <translation>Die Kundenakten zur Auswahl zeigen</translation>
    </message>
    <message>
        <source>Shows names: turn the screen away from others first</source>
        <translation>Zeigt Namen: zuerst den Bildschirm von anderen wegdrehen</translation>
    </message>
    <message>
        <source>No other client is kept here.</source>
        <translation>Hier liegt keine andere Kundenakte.</translation>
    </message>
    <message>
        <source>Clients</source>
        <translation>Kundenakten</translation>
    </message>
    <message>
        <source>It is this client</source>
        <translation>Es ist diese Person</translation>
    </message>
    <message>
        <source>Nothing is kept of this client yet.</source>
        <translation>Zu dieser Person wird noch nichts aufbewahrt.</translation>
    </message>
    <message>
        <source>Begun on %1.</source>
        <translation>Begonnen am %1.</translation>
    </message>
    <message>
        <source>On this computer, in a folder that only your login can open, apart from the plan. It is not encrypted unless your disk is.</source>
        <translation>Auf diesem Rechner, in einem Ordner, den nur Ihre Anmeldung öffnen kann, getrennt vom Plan. Verschlüsselt ist er nur, wenn Ihr Datenträger es ist.</translation>
    </message>
    <message>
        <source>The plan has no field for a name, a contact or a health answer. It does hold the head, the hair, your notes, the agreed picture and the log: write no name and no health answer into it.</source>
        <translation>Der Plan hat kein Feld für Namen, Kontakt oder Gesundheitsangaben. Er enthält aber Kopf, Haar, Ihre Notizen, das vereinbarte Bild und das Protokoll: keinen Namen und keine Gesundheitsangabe hineinschreiben.</translation>
    </message>
    <message>
        <source>All that is kept of this client goes for good: answers, photos, notes, visits; of the plans of this client also what the program keeps beside them: unsaved work, versions before the last save. Plans of other visits, pages and PDFs, handed-over folders and backups stay.</source>
        <translation>Alles, was zu dieser Person aufbewahrt wird, wird endgültig gelöscht: Antworten, Fotos, Notizen, Besuche; von den Plänen zu ihr auch, was das Programm daneben aufbewahrt: nicht Gespeichertes, Fassungen vor dem letzten Speichern. Pläne anderer Besuche, Seiten und PDFs, ausgehändigte Ordner und Sicherungen bleiben.</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::ConsultationPage</name>
    <message>
        <source>YYYY-MM-DD</source>
        <translation>JJJJ-MM-TT</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::ConsultationQuestions</name>
    <message>
        <source>Consent</source>
        <translation>Einverständnis</translation>
    </message>
    <message>
        <source>Health answers, tests and photos are kept only when the client agrees. Say what for, and where they are kept; the client can see them, have a copy and take consent back at any time.</source>
        <translation>Gesundheitsangaben, Tests und Fotos werden nur aufbewahrt, wenn die Person einverstanden ist. Sagen Sie, wofür und wo sie aufbewahrt werden; die Person kann sie ansehen, eine Kopie bekommen und das Einverständnis jederzeit zurücknehmen.</translation>
    </message>
    <message>
        <source>Kept for</source>
        <translation>Aufbewahrt für</translation>
    </message>
    <message>
        <source>type the purpose</source>
        <translation>Zweck eintragen</translation>
    </message>
    <message>
        <source>What you told the client it is kept for</source>
        <translation>Der Zweck, den Sie der Person genannt haben</translation>
    </message>
    <message>
        <source>Agreed on</source>
        <translation>Einverstanden am</translation>
    </message>
    <message>
        <source>YYYY-MM-DD</source>
        <translation>JJJJ-MM-TT</translation>
    </message>
    <message>
        <source>The day the client agreed; empty takes today</source>
        <translation>Der Tag des Einverständnisses; leer heißt heute</translation>
    </message>
    <message>
        <source>The client agrees</source>
        <translation>Die Person ist einverstanden</translation>
    </message>
    <message>
        <source>Consent was taken back</source>
        <translation>Das Einverständnis wurde zurückgenommen</translation>
    </message>
    <message>
        <source>Take them away</source>
        <translation>Wegnehmen</translation>
    </message>
    <message>
        <source>Type what it is kept for, as you told the client.</source>
        <translation>Eintragen, wofür es aufbewahrt wird, wie Sie es der Person gesagt haben.</translation>
    </message>
    <message>
        <source>Not asked</source>
        <translation>Nicht gefragt</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>Of the age that label, local rules and insurer ask for</source>
        <translation>In dem Alter, das Etikett, örtliche Vorschriften und Versicherung verlangen</translation>
    </message>
    <message>
        <source>Has reacted before, also to a temporary black tattoo</source>
        <translation>Hat schon einmal reagiert, auch auf eine aufgemalte schwarze Tätowierung</translation>
    </message>
    <message>
        <source>To what, and how</source>
        <translation>Worauf und wie</translation>
    </message>
    <message>
        <source>Scalp</source>
        <translation>Kopfhaut</translation>
    </message>
    <message>
        <source>Something</source>
        <translation>Etwas</translation>
    </message>
    <message>
        <source>What was seen, and where</source>
        <translation>Was zu sehen war und wo</translation>
    </message>
    <message>
        <source>what you see, without naming it</source>
        <translation>was Sie sehen, ohne es zu benennen</translation>
    </message>
    <message>
        <source>Asked on</source>
        <translation>Gefragt am</translation>
    </message>
    <message>
        <source>The day of these answers; they change</source>
        <translation>Der Tag dieser Antworten; sie ändern sich</translation>
    </message>
    <message>
        <source>What the hair has been through</source>
        <translation>Was das Haar hinter sich hat</translation>
    </message>
    <message>
        <source>Dye</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>Henna</source>
        <translation>Henna</translation>
    </message>
    <message>
        <source>Metallic colour</source>
        <translation>Metallhaltige Farbe</translation>
    </message>
    <message>
        <source>Box colour</source>
        <translation>Farbe aus der Packung</translation>
    </message>
    <message>
        <source>Last lightening</source>
        <translation>Letzte Aufhellung</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>nicht gefragt</translation>
    </message>
    <message>
        <source>When, and where on the head</source>
        <translation>Wann und wo am Kopf</translation>
    </message>
    <message>
        <source>What else</source>
        <translation>Was sonst</translation>
    </message>
    <message>
        <source>relaxer, perm, sea and pool, care at home</source>
        <translation>Glättung, Dauerwelle, Meer und Schwimmbad, Pflege zu Hause</translation>
    </message>
    <message>
        <source>Agreed on %1, kept for: %2</source>
        <translation>Einverstanden am %1, aufbewahrt für: %2</translation>
    </message>
    <message>
        <source>Doesn&apos;t know</source>
        <translation>Weiß nicht</translation>
    </message>
    <message>
        <source>Asked, and the client does not know: looked at as if it were a yes</source>
        <translation>Gefragt, aber nicht bekannt: wird angesehen, als wäre es ein Ja</translation>
    </message>
    <message>
        <source>Not looked</source>
        <translation>Ungeprüft</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Nichts</translation>
    </message>
    <message>
        <source>Unsure</source>
        <translation>Unklar</translation>
    </message>
    <message>
        <source>Looked at, and you cannot tell</source>
        <translation>Angesehen, und Sie können es nicht sagen</translation>
    </message>
    <message>
        <source>Health answers, tests and photos are deleted here; backups are not reached. Name, contact, wishes, history, prices, notes and visits stay: look whether health words stand in the notes.</source>
        <translation>Gesundheitsangaben, Tests und Fotos werden hier gelöscht; Sicherungen werden nicht erreicht. Name, Kontakt, Wünsche, Vorgeschichte, Preise, Notizen und Besuche bleiben: nachsehen, ob in den Notizen etwas zur Gesundheit steht.</translation>
    </message>
    <message>
        <source>1 photo could not be deleted; close what shows it and try again. Until then the consent stays written down.</source>
        <translation>1 Foto konnte nicht gelöscht werden; schließen, was es zeigt, und noch einmal versuchen. Bis dahin bleibt das Einverständnis vermerkt.</translation>
    </message>
    <message>
        <source>%1 photos could not be deleted; close what shows them and try again. Until then the consent stays written down.</source>
        <translation>%1 Fotos konnten nicht gelöscht werden; schließen, was sie zeigt, und noch einmal versuchen. Bis dahin bleibt das Einverständnis vermerkt.</translation>
    </message>
    <message>
        <source>in the client&apos;s words; also whether there ever was a temporary black tattoo, and short breath</source>
        <translation>in den Worten der Person; auch, ob es je eine aufgemalte schwarze Tätowierung gab, und Atemnot</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::ConsultationVisits</name>
    <message>
        <source>Visits</source>
        <translation>Besuche</translation>
    </message>
    <message>
        <source>None yet. A visit keeps the day and which plan it was, so that the next plan of this client finds all of this again.</source>
        <translation>Noch keine. Ein Besuch hält den Tag fest und welcher Plan es war, damit der nächste Plan für diese Person all das wiederfindet.</translation>
    </message>
    <message>
        <source>Add a visit with this plan</source>
        <translation>Einen Besuch mit diesem Plan hinzufügen</translation>
    </message>
    <message>
        <source>Writes down today and the plan that is open; the day can be changed</source>
        <translation>Notiert heute und den geöffneten Plan; der Tag lässt sich ändern</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>YYYY-MM-DD</source>
        <translation>JJJJ-MM-TT</translation>
    </message>
    <message>
        <source>The day of this visit</source>
        <translation>Der Tag dieses Besuchs</translation>
    </message>
    <message>
        <source>About this visit</source>
        <translation>Zu diesem Besuch</translation>
    </message>
    <message>
        <source>how it went, what the client said, what to change</source>
        <translation>wie es lief, was gesagt wurde, was zu ändern ist</translation>
    </message>
    <message>
        <source>Remove this visit</source>
        <translation>Diesen Besuch entfernen</translation>
    </message>
    <message>
        <source>The visit and its words are gone then; its plan stays.</source>
        <translation>Der Besuch und sein Text sind dann weg; sein Plan bleibt.</translation>
    </message>
    <message>
        <source>Remove it for good</source>
        <translation>Endgültig entfernen</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>about this client</source>
        <translation>zu dieser Person</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>no day</source>
        <translation>kein Tag</translation>
    </message>
    <message>
        <source>With the plan that is open.</source>
        <translation>Mit dem geöffneten Plan.</translation>
    </message>
    <message>
        <source>With the plan “%1”, number %2.</source>
        <translation>Mit dem Plan „%1“, Nummer %2.</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::ConsultationWishes</name>
    <message>
        <source>Wanted</source>
        <translation>Gewünscht</translation>
    </message>
    <message>
        <source>in the client&apos;s own words</source>
        <translation>in den eigenen Worten der Person</translation>
    </message>
    <message>
        <source>Not wanted</source>
        <translation>Nicht gewünscht</translation>
    </message>
    <message>
        <source>what it must not look like</source>
        <translation>wonach es nicht aussehen darf</translation>
    </message>
    <message>
        <source>How it is lived with</source>
        <translation>Im Alltag</translation>
    </message>
    <message>
        <source>How it is worn and parted</source>
        <translation>Wie es getragen und gescheitelt wird</translation>
    </message>
    <message>
        <source>down, tied, parted where, in the wind</source>
        <translation>offen, gebunden, wo gescheitelt, im Wind</translation>
    </message>
    <message>
        <source>Upkeep accepted</source>
        <translation>Akzeptierter Pflegeaufwand</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>nicht gefragt</translation>
    </message>
    <message>
        <source>How often the client will come back, and what care happens at home</source>
        <translation>Wie oft die Person wiederkommt und welche Pflege zu Hause geschieht</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>Budget</translation>
    </message>
    <message>
        <source>In the client&apos;s words or numbers</source>
        <translation>In Worten oder Zahlen der Person</translation>
    </message>
    <message>
        <source>Number of visits</source>
        <translation>Zahl der Besuche</translation>
    </message>
    <message>
        <source>not agreed</source>
        <translation>nicht vereinbart</translation>
    </message>
    <message>
        <source>A plan may be one of several visits</source>
        <translation>Ein Plan kann einer von mehreren Besuchen sein</translation>
    </message>
    <message>
        <source>Each choice costs</source>
        <translation>Jede Variante kostet</translation>
    </message>
    <message>
        <source>Choice %1</source>
        <translation>Variante %1</translation>
    </message>
    <message>
        <source>%1: minutes</source>
        <translation>%1: Minuten</translation>
    </message>
    <message>
        <source>not typed</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>How long it takes, by your own reckoning</source>
        <translation>Wie lange es dauert, nach Ihrer eigenen Rechnung</translation>
    </message>
    <message>
        <source>%1: price</source>
        <translation>%1: Preis</translation>
    </message>
    <message>
        <source>In your own words or numbers</source>
        <translation>In Ihren eigenen Worten oder Zahlen</translation>
    </message>
    <message>
        <source>%1: visits</source>
        <translation>%1: Besuche</translation>
    </message>
    <message>
        <source>How many visits you plan for</source>
        <translation>Wie viele Besuche Sie vorsehen</translation>
    </message>
    <message>
        <source>Typed by you: what is offered is yours to say.</source>
        <translation>Von Ihnen eingetragen: Was angeboten wird, bestimmen Sie.</translation>
    </message>
    <message>
        <source>Type it in</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>Puts this sum into the price, where you can change it</source>
        <translation>Setzt diese Summe in den Preis, wo Sie sie ändern können</translation>
    </message>
    <message>
        <source>Choice %1: type the estimate in as the price</source>
        <translation>Variante %1: die Schätzung als Preis eintragen</translation>
    </message>
    <message>
        <source>By your own rates and the plan&apos;s assumptions: being worked out.</source>
        <translation>Nach eigenen Sätzen und den Annahmen des Plans: wird ausgerechnet.</translation>
    </message>
    <message>
        <source>By your own rates and the plan&apos;s assumptions, one pair of hands: %1, for %2. The time on the hair and the reserve are not in it.</source>
        <translation>Nach eigenen Sätzen und den Annahmen des Plans, ein Paar Hände: %1, für %2. Die Zeit auf dem Haar und die Reserve sind nicht darin.</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::FormulaCard</name>
    <message>
        <source>Formulas</source>
        <translation>Rezepturen</translation>
    </message>
    <message>
        <source>The maker&apos;s directions come first, then local rules, your licence and your insurer. Strengths, times and ratios stand here only as you type them from the leaflet.</source>
        <translation>Die Angaben des Herstellers gehen vor, dann örtliche Vorschriften, Ihre Berufsberechtigung und Ihre Versicherung. Stärken, Zeiten und Verhältnisse stehen hier nur so, wie Sie sie aus der Gebrauchsanweisung eintragen.</translation>
    </message>
    <message>
        <source>Gloves, changed between clients; fresh air; powder can harm the lungs. Keep it out of the eyes: if it gets in, rinse with water at once and get medical help.</source>
        <translation>Handschuhe, für jeden Kopf neue; frische Luft; Pulver kann der Lunge schaden. Nicht in die Augen bringen: sonst sofort mit Wasser ausspülen und ärztliche Hilfe holen.</translation>
    </message>
    <message>
        <source>No formula yet. Add one for each mixture: what you type here gets its letter and hatch on the sheet, and pieces can name it.</source>
        <translation>Noch keine Rezeptur. Für jede Mischung eine anlegen: Was hier eingetragen wird, bekommt Buchstabe und Schraffur auf dem Kopfblatt, und Strähnen können sie nennen.</translation>
    </message>
    <message>
        <source>Add formula</source>
        <translation>Rezeptur anlegen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove this formula; pieces that use it then name none</source>
        <translation>Diese Rezeptur entfernen; Strähnen, die sie verwenden, nennen dann keine</translation>
    </message>
    <message>
        <source>Letter on the sheet</source>
        <translation>Buchstabe auf dem Kopfblatt</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <source>One letter, A to Z: it stands with the hatch on the sheet and on paper</source>
        <translation>Ein Buchstabe, A bis Z: Er steht mit der Schraffur auf dem Kopfblatt und auf Papier</translation>
    </message>
    <message>
        <source>letter</source>
        <translation>Buchstabe</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>lightener</source>
        <translation>Blondiermittel</translation>
    </message>
    <message>
        <source>toner</source>
        <translation>Toner</translation>
    </message>
    <message>
        <source>glaze</source>
        <translation>Glanztönung</translation>
    </message>
    <message>
        <source>deepening colour</source>
        <translation>dunklere Farbe</translation>
    </message>
    <message>
        <source>choose or type</source>
        <translation>wählen oder eintragen</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>Leaflet</source>
        <translation>Gebrauchsanweisung</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Which leaflet, label or page this was read in</source>
        <translation>In welcher Gebrauchsanweisung, auf welchem Etikett oder welcher Seite das stand</translation>
    </message>
    <message>
        <source>origin</source>
        <translation>Herkunft</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>YYYY-MM-DD</source>
        <translation>JJJJ-MM-TT</translation>
    </message>
    <message>
        <source>When it was read: leaflets change</source>
        <translation>Wann es gelesen wurde: Gebrauchsanweisungen ändern sich</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Leaflet allows scalp contact</source>
        <translation>Gebrauchsanweisung erlaubt Kontakt mit der Kopfhaut</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>Not stated</source>
        <translation>Nicht angegeben</translation>
    </message>
    <message>
        <source>scalp contact</source>
        <translation>Kontakt mit der Kopfhaut</translation>
    </message>
    <message>
        <source>Used by</source>
        <translation>Verwendet von</translation>
    </message>
    <message>
        <source>Select these pieces</source>
        <translation>Diese Strähnen wählen</translation>
    </message>
    <message>
        <source>Add formula %1</source>
        <translation>Rezeptur %1 anlegen</translation>
    </message>
    <message>
        <source>Remove formula %1</source>
        <translation>Rezeptur %1 entfernen</translation>
    </message>
    <message>
        <source>Change %1 of formula %2</source>
        <translation>%1 der Rezeptur %2 ändern</translation>
    </message>
    <message>
        <source>Another formula has this letter too: on the sheet they look alike.</source>
        <translation>Auch eine andere Rezeptur hat diesen Buchstaben: Auf dem Kopfblatt sehen sie gleich aus.</translation>
    </message>
    <message>
        <source>at the root: %1</source>
        <translation>am Ansatz: %1</translation>
    </message>
    <message>
        <source>at the ends: %1</source>
        <translation>an den Spitzen: %1</translation>
    </message>
    <message>
        <source>root shadows and glazes: %1</source>
        <translation>Ansatzschatten und Glanztönungen: %1</translation>
    </message>
    <message>
        <source>no piece yet; choose it on the piece card</source>
        <translation>noch keine Strähne; auf der Strähnenkarte wählen</translation>
    </message>
    <message>
        <source>More about it</source>
        <translation>Mehr dazu</translation>
    </message>
    <message>
        <source>what else belongs to it</source>
        <translation>was sonst dazugehört</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>type it from the leaflet</source>
        <translation>aus der Anleitung eintragen</translation>
    </message>
    <message>
        <source>Above 0, or empty when the leaflet does not say.</source>
        <translation>Über 0, oder leer, wenn die Gebrauchsanweisung nichts sagt.</translation>
    </message>
    <message>
        <source>A bowl may be used for</source>
        <translation>Eine Schale darf verwendet werden</translation>
    </message>
    <message>
        <source>Counted from the beginning of mixing; without it no bowl is planned anew</source>
        <translation>Gezählt ab Beginn des Anmischens; ohne sie wird keine Schale neu eingeplant</translation>
    </message>
    <message>
        <source>working life</source>
        <translation>Verarbeitungszeit</translation>
    </message>
    <message>
        <source>Longest time on the hair</source>
        <translation>Längste Zeit auf dem Haar</translation>
    </message>
    <message>
        <source>The maker&apos;s limit; without it the appointment has no timer</source>
        <translation>Die Grenze des Herstellers; ohne sie hat der Termin keinen Timer</translation>
    </message>
    <message>
        <source>longest time</source>
        <translation>längste Einwirkzeit</translation>
    </message>
    <message>
        <source>Directions</source>
        <translation>Anwendung</translation>
    </message>
    <message>
        <source>as the leaflet says, in its words</source>
        <translation>wie es in der Anleitung steht, wörtlich</translation>
    </message>
    <message>
        <source>directions</source>
        <translation>Anwendung</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::HairCard</name>
    <message>
        <source>Hair</source>
        <translation>Haar</translation>
    </message>
    <message>
        <source>How it falls</source>
        <translation>Wie es fällt</translation>
    </message>
    <message>
        <source>straight</source>
        <translation>glatt</translation>
    </message>
    <message>
        <source>loose wave</source>
        <translation>leichte Welle</translation>
    </message>
    <message>
        <source>wave</source>
        <translation>Welle</translation>
    </message>
    <message>
        <source>loose curl</source>
        <translation>lockere Locke</translation>
    </message>
    <message>
        <source>curl</source>
        <translation>Locke</translation>
    </message>
    <message>
        <source>tight curl</source>
        <translation>enge Locke</translation>
    </message>
    <message>
        <source>coil</source>
        <translation>Kraushaar</translation>
    </message>
    <message>
        <source>tight coil</source>
        <translation>enges Kraushaar</translation>
    </message>
    <message>
        <source>how the hair falls</source>
        <translation>wie das Haar fällt</translation>
    </message>
    <message>
        <source>Length and level</source>
        <translation>Länge und Tonhöhe</translation>
    </message>
    <message>
        <source>All zones the same</source>
        <translation>Alle Zonen gleich</translation>
    </message>
    <message>
        <source>One row: what is typed goes to the whole head</source>
        <translation>Eine Zeile: Was eingetragen wird, gilt für den ganzen Kopf</translation>
    </message>
    <message>
        <source>Zone by zone</source>
        <translation>Zone für Zone</translation>
    </message>
    <message>
        <source>A row for each zone of the head</source>
        <translation>Eine Zeile für jede Zone des Kopfs</translation>
    </message>
    <message>
        <source>all zones</source>
        <translation>alle Zonen</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>level at the root</source>
        <translation>Tonhöhe am Ansatz</translation>
    </message>
    <message>
        <source>level in the middle</source>
        <translation>Tonhöhe in der Mitte</translation>
    </message>
    <message>
        <source>level at the ends</source>
        <translation>Tonhöhe an den Spitzen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Old colour bands</source>
        <translation>Alte Farbbänder</translation>
    </message>
    <message>
        <source>band</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>Add band</source>
        <translation>Band anlegen</translation>
    </message>
    <message>
        <source>None. A band is a stretch where all hair has another level, from earlier colour.</source>
        <translation>Keine. Ein Band ist ein Stück, auf dem alles Haar von früherer Farbe eine andere Tonhöhe hat.</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>level</source>
        <translation>Tonhöhe</translation>
    </message>
    <message>
        <source>Add colour band</source>
        <translation>Farbband anlegen</translation>
    </message>
    <message>
        <source>Remove colour band %1</source>
        <translation>Farbband %1 entfernen</translation>
    </message>
    <message>
        <source>zone of colour band %1</source>
        <translation>Zone des Farbbands %1</translation>
    </message>
    <message>
        <source>colour band %1</source>
        <translation>Farbband %1</translation>
    </message>
    <message>
        <source>Already light, scattered</source>
        <translation>Schon hell, verstreut</translation>
    </message>
    <message>
        <source>light hair</source>
        <translation>helles Haar</translation>
    </message>
    <message>
        <source>Add light hair</source>
        <translation>Helles Haar anlegen</translation>
    </message>
    <message>
        <source>None. Here stands which share of the hairs is already light, as after earlier highlights.</source>
        <translation>Keines. Hier steht, welcher Anteil der Haare schon hell ist, etwa nach früheren Strähnen.</translation>
    </message>
    <message>
        <source>share, %</source>
        <translation>Anteil, %</translation>
    </message>
    <message>
        <source>Remove light hair %1</source>
        <translation>Helles Haar %1 entfernen</translation>
    </message>
    <message>
        <source>zone of light hair %1</source>
        <translation>Zone des hellen Haars %1</translation>
    </message>
    <message>
        <source>light hair %1</source>
        <translation>helles Haar %1</translation>
    </message>
    <message>
        <source>Condition, as found</source>
        <translation>Zustand, wie vorgefunden</translation>
    </message>
    <message>
        <source>not checked</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>poor</source>
        <translation>schlecht</translation>
    </message>
    <message>
        <source>All zones</source>
        <translation>Alle Zonen</translation>
    </message>
    <message>
        <source>Porosity, elasticity, breakage as found by hand; recorded by you</source>
        <translation>Porosität, Elastizität, Haarbruch, von Hand geprüft und von Ihnen vermerkt</translation>
    </message>
    <message>
        <source>condition, %1</source>
        <translation>Zustand, %1</translation>
    </message>
    <message>
        <source>Checked on</source>
        <translation>Geprüft am</translation>
    </message>
    <message>
        <source>YYYY-MM-DD</source>
        <translation>JJJJ-MM-TT</translation>
    </message>
    <message>
        <source>The day the condition was looked at</source>
        <translation>Der Tag, an dem der Zustand geprüft wurde</translation>
    </message>
    <message>
        <source>date of the check</source>
        <translation>Datum der Prüfung</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>%1 ändern</translation>
    </message>
    <message>
        <source>Hairs on a square centimetre</source>
        <translation>Haare je Quadratzentimeter</translation>
    </message>
    <message>
        <source>how much hair</source>
        <translation>wie viel Haar</translation>
    </message>
    <message>
        <source>Thickness of one hair</source>
        <translation>Dicke eines Haars</translation>
    </message>
    <message>
        <source>thickness of one hair</source>
        <translation>Dicke eines Haars</translation>
    </message>
    <message>
        <source>Layering</source>
        <translation>Stufung</translation>
    </message>
    <message>
        <source>layering</source>
        <translation>Stufung</translation>
    </message>
    <message>
        <source>Cut line, below the head&apos;s middle</source>
        <translation>Schnittlinie, unter der Mitte des Kopfs</translation>
    </message>
    <message>
        <source>cut line</source>
        <translation>Schnittlinie</translation>
    </message>
    <message>
        <source>as grown</source>
        <translation>wie gewachsen</translation>
    </message>
    <message>
        <source>Natural tone, ash −1 to red-gold +1</source>
        <translation>Naturton, aschig −1 bis rotgold +1</translation>
    </message>
    <message>
        <source>natural tone</source>
        <translation>Naturton</translation>
    </message>
    <message>
        <source>White hair</source>
        <translation>Weißes Haar</translation>
    </message>
    <message>
        <source>white hair</source>
        <translation>weißes Haar</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::HeadCard</name>
    <message>
        <source>Head</source>
        <translation>Kopf</translation>
    </message>
    <message>
        <source>Hairline</source>
        <translation>Haarlinie</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Haut</translation>
    </message>
    <message>
        <source>Scalp and face</source>
        <translation>Kopfhaut und Gesicht</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>light</source>
        <translation>hell</translation>
    </message>
    <message>
        <source>medium</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>tan</source>
        <translation>gebräunt</translation>
    </message>
    <message>
        <source>deep</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>Scalp that shows changes how bright hair looks</source>
        <translation>Sichtbare Kopfhaut verändert, wie hell das Haar wirkt</translation>
    </message>
    <message>
        <source>skin</source>
        <translation>Haut</translation>
    </message>
    <message>
        <source>Head size</source>
        <translation>Kopfgröße</translation>
    </message>
    <message>
        <source>Small</source>
        <translation>Klein</translation>
    </message>
    <message>
        <source>Medium</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>Large</source>
        <translation>Groß</translation>
    </message>
    <message>
        <source>head size</source>
        <translation>Kopfgröße</translation>
    </message>
    <message>
        <source>Survey the size comes from</source>
        <translation>Reihenmessung, aus der die Größe stammt</translation>
    </message>
    <message>
        <source>Women&apos;s sizes</source>
        <translation>Frauengrößen</translation>
    </message>
    <message>
        <source>Small, medium and large as in a survey of women</source>
        <translation>Klein, mittel und groß wie in einer Reihenmessung von Frauen</translation>
    </message>
    <message>
        <source>Men&apos;s sizes</source>
        <translation>Männergrößen</translation>
    </message>
    <message>
        <source>Small, medium and large as in a survey of men</source>
        <translation>Klein, mittel und groß wie in einer Reihenmessung von Männern</translation>
    </message>
    <message>
        <source>sizes</source>
        <translation>Größen</translation>
    </message>
    <message>
        <source>Measures</source>
        <translation>Maße</translation>
    </message>
    <message>
        <source>Type what you measured; the others follow.</source>
        <translation>Eintragen, was gemessen wurde; die anderen folgen.</translation>
    </message>
    <message>
        <source>Usual part</source>
        <translation>Üblicher Scheitel</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keiner</translation>
    </message>
    <message>
        <source>Combed back, no part</source>
        <translation>Zurückgekämmt, ohne Scheitel</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>On the client&apos;s left</source>
        <translation>Auf der linken Kopfseite</translation>
    </message>
    <message>
        <source>Middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>On the client&apos;s right</source>
        <translation>Auf der rechten Kopfseite</translation>
    </message>
    <message>
        <source>usual part</source>
        <translation>üblicher Scheitel</translation>
    </message>
    <message>
        <source>Draw the part anew there</source>
        <translation>Den Scheitel dort neu ziehen</translation>
    </message>
    <message>
        <source>Takes back what was moved or drawn on the sheet</source>
        <translation>Nimmt zurück, was auf dem Kopfblatt verschoben oder gezeichnet wurde</translation>
    </message>
    <message>
        <source>Draw the part anew</source>
        <translation>Den Scheitel neu ziehen</translation>
    </message>
    <message>
        <source>Swirls at the crown</source>
        <translation>Wirbel am Oberkopf</translation>
    </message>
    <message>
        <source>Two</source>
        <translation>Zwei</translation>
    </message>
    <message>
        <source>swirls</source>
        <translation>Wirbel</translation>
    </message>
    <message>
        <source>It turns</source>
        <translation>Er dreht</translation>
    </message>
    <message>
        <source>The second turns</source>
        <translation>Der zweite dreht</translation>
    </message>
    <message>
        <source>Clockwise</source>
        <translation>Im Uhrzeigersinn</translation>
    </message>
    <message>
        <source>Looking down at it</source>
        <translation>Von oben gesehen</translation>
    </message>
    <message>
        <source>Counterclockwise</source>
        <translation>Gegen den Uhrzeigersinn</translation>
    </message>
    <message>
        <source>how a swirl turns</source>
        <translation>wie ein Wirbel dreht</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>%1 ändern</translation>
    </message>
    <message>
        <source>The first turns</source>
        <translation>Der erste dreht</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>%1: %2 %5 is outside what nine of ten heads have (%3 to %4). Check the tape.</source>
        <translation>%1: %2 %5 liegt außerhalb dessen, was neun von zehn Köpfen haben (%3 bis %4). Das Maßband prüfen.</translation>
    </message>
    <message>
        <source>These measures do not fit one head: check the tape round the head, its length and its breadth.</source>
        <translation>Diese Maße ergeben keinen Kopf: das Band um den Kopf, seine Länge und seine Breite prüfen.</translation>
    </message>
    <message>
        <source>Round the head</source>
        <translation>Um den Kopf</translation>
    </message>
    <message>
        <source>head measure</source>
        <translation>Kopfumfang</translation>
    </message>
    <message>
        <source>Forehead to back</source>
        <translation>Stirn bis Hinterkopf</translation>
    </message>
    <message>
        <source>head length</source>
        <translation>Kopflänge</translation>
    </message>
    <message>
        <source>Breadth above the ears</source>
        <translation>Breite über den Ohren</translation>
    </message>
    <message>
        <source>head breadth</source>
        <translation>Kopfbreite</translation>
    </message>
    <message>
        <source>Ear to ear over the top</source>
        <translation>Von Ohr zu Ohr über den Kopf</translation>
    </message>
    <message>
        <source>ear to ear</source>
        <translation>Ohr zu Ohr</translation>
    </message>
    <message>
        <source>Front hairline, up or down (−)</source>
        <translation>Vordere Haarlinie, nach oben oder unten (−)</translation>
    </message>
    <message>
        <source>front hairline</source>
        <translation>vordere Haarlinie</translation>
    </message>
    <message>
        <source>Temples, up or down (−)</source>
        <translation>Schläfen, nach oben oder unten (−)</translation>
    </message>
    <message>
        <source>temples</source>
        <translation>Schläfen</translation>
    </message>
    <message>
        <source>Over the ears, up or down (−)</source>
        <translation>Über den Ohren, nach oben oder unten (−)</translation>
    </message>
    <message>
        <source>hairline at the sides</source>
        <translation>Haarlinie an den Seiten</translation>
    </message>
    <message>
        <source>Nape, up or down (−)</source>
        <translation>Nacken, nach oben oder unten (−)</translation>
    </message>
    <message>
        <source>nape hairline</source>
        <translation>Nackenhaarlinie</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::HistogramDrawing</name>
    <message>
        <source>How neighbouring hair differs</source>
        <translation>Wie sich benachbartes Haar unterscheidet</translation>
    </message>
    <message>
        <source>Half of the hair lies between %1 and %2 L* of the hair around it, nine tenths between %3 and %4</source>
        <translation>Die Hälfte des Haars liegt zwischen %1 und %2 L* vom Haar ringsum, neun Zehntel zwischen %3 und %4</translation>
    </message>
    <message>
        <source>How much lighter or darker each place is than the hair around it. Two humps are two levels, one is one tone.</source>
        <translation>Wie viel heller oder dunkler jede Stelle ist als das Haar ringsum. Zwei Hügel sind zwei Stufen, einer ist ein Ton.</translation>
    </message>
    <message>
        <source>%1 darker</source>
        <translation>%1 dunkler</translation>
    </message>
    <message>
        <source>as around</source>
        <translation>wie ringsum</translation>
    </message>
    <message>
        <source>%1 lighter</source>
        <translation>%1 heller</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::MixRows</name>
    <message>
        <source>Products, parts by weight</source>
        <translation>Produkte, Gewichtsteile</translation>
    </message>
    <message>
        <source>Developer, strength, parts by weight</source>
        <translation>Entwickler, Stärke, Gewichtsteile</translation>
    </message>
    <message>
        <source>Additives, parts by weight</source>
        <translation>Zusätze, Gewichtsteile</translation>
    </message>
    <message>
        <source>Add product</source>
        <translation>Produkt hinzufügen</translation>
    </message>
    <message>
        <source>Add developer</source>
        <translation>Entwickler hinzufügen</translation>
    </message>
    <message>
        <source>Add additive</source>
        <translation>Zusatz hinzufügen</translation>
    </message>
    <message>
        <source>One more row, empty until you type what the leaflet says</source>
        <translation>Eine weitere Zeile, leer, bis Sie eintragen, was die Gebrauchsanweisung sagt</translation>
    </message>
    <message>
        <source>products</source>
        <translation>Produkte</translation>
    </message>
    <message>
        <source>developers</source>
        <translation>Entwickler</translation>
    </message>
    <message>
        <source>additives</source>
        <translation>Zusätze</translation>
    </message>
    <message>
        <source>product %1</source>
        <translation>Produkt %1</translation>
    </message>
    <message>
        <source>developer %1</source>
        <translation>Entwickler %1</translation>
    </message>
    <message>
        <source>additive %1</source>
        <translation>Zusatz %1</translation>
    </message>
    <message>
        <source>what it is</source>
        <translation>was es ist</translation>
    </message>
    <message>
        <source>Name of %1</source>
        <translation>Name von %1</translation>
    </message>
    <message>
        <source>name of %1</source>
        <translation>Name von %1</translation>
    </message>
    <message>
        <source>type it</source>
        <translation>eintragen</translation>
    </message>
    <message>
        <source>Strength of %1</source>
        <translation>Stärke von %1</translation>
    </message>
    <message>
        <source>Hydrogen peroxide, as its label says</source>
        <translation>Wasserstoffperoxid, wie das Etikett es sagt</translation>
    </message>
    <message>
        <source>strength of %1</source>
        <translation>Stärke von %1</translation>
    </message>
    <message>
        <source>Unit of %1</source>
        <translation>Einheit von %1</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>vol</source>
        <translation>Vol.</translation>
    </message>
    <message>
        <source>unit of %1</source>
        <translation>Einheit von %1</translation>
    </message>
    <message>
        <source>Parts of %1</source>
        <translation>Teile von %1</translation>
    </message>
    <message>
        <source>Parts by weight, as the leaflet says; a bowl is split into grams when all are typed</source>
        <translation>Gewichtsteile, wie die Gebrauchsanweisung sie nennt; eine Schale wird in Gramm geteilt, wenn alle eingetragen sind</translation>
    </message>
    <message>
        <source>parts of %1</source>
        <translation>Teile von %1</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>Take %1 out of the mixture</source>
        <translation>%1 aus der Mischung nehmen</translation>
    </message>
    <message>
        <source>Type strength and parts of each developer to see what they come to.</source>
        <translation>Stärke und Teile jedes Entwicklers eintragen, um zu sehen, was zusammenkommt.</translation>
    </message>
    <message>
        <source>Mixed by these parts: %1 %, %2 volumes exactly.</source>
        <translation>Nach diesen Teilen gemischt: %1 %, genau %2 Volumen.</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::PhotoStrip</name>
    <message>
        <source>Wanted</source>
        <translation>Gewünscht</translation>
    </message>
    <message>
        <source>Not wanted</source>
        <translation>Nicht gewünscht</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Photos are kept once the client has agreed to it.</source>
        <translation>Fotos werden aufbewahrt, sobald die Person einverstanden ist.</translation>
    </message>
    <message>
        <source>Ask for consent</source>
        <translation>Nach dem Einverständnis fragen</translation>
    </message>
    <message>
        <source>Turns to the page of questions, where consent is written down</source>
        <translation>Geht zur Seite der Fragen, wo das Einverständnis notiert wird</translation>
    </message>
    <message>
        <source>None yet. Add what the client likes and does not like; a copy goes into the client&apos;s folder.</source>
        <translation>Noch keine. Hinzufügen, was gefällt und was nicht gefällt; eine Kopie kommt in die Kundenakte.</translation>
    </message>
    <message>
        <source>Add photos…</source>
        <translation>Fotos hinzufügen…</translation>
    </message>
    <message>
        <source>JPEG, PNG or WebP; turned upright, and without what the camera wrote into them</source>
        <translation>JPEG, PNG oder WebP; aufrecht gedreht und ohne das, was die Kamera hineingeschrieben hat</translation>
    </message>
    <message>
        <source>What the photo shows</source>
        <translation>Was das Foto zeigt</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>what about it</source>
        <translation>was damit ist</translation>
    </message>
    <message>
        <source>What the client says about this photo</source>
        <translation>Was die Person zu diesem Foto sagt</translation>
    </message>
    <message>
        <source>Remove this photo</source>
        <translation>Dieses Foto entfernen</translation>
    </message>
    <message>
        <source>It is taken off the disk and cannot be brought back. The file it was copied from stays.</source>
        <translation>Es wird vom Datenträger genommen und ist nicht zurückzuholen. Die Datei, von der es kopiert wurde, bleibt.</translation>
    </message>
    <message>
        <source>Remove it for good</source>
        <translation>Endgültig entfernen</translation>
    </message>
    <message>
        <source>Photo %1 of %2, %3</source>
        <translation>Foto %1 von %2, %3</translation>
    </message>
    <message>
        <source>This photo cannot be read any more: its file is missing or damaged.</source>
        <translation>Dieses Foto ist nicht mehr lesbar: Seine Datei fehlt oder ist beschädigt.</translation>
    </message>
    <message>
        <source>This photo could not be deleted; close what shows it and try again.</source>
        <translation>Dieses Foto konnte nicht gelöscht werden; schließen, was es zeigt, und noch einmal versuchen.</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::PieceCard</name>
    <message>
        <source>none named</source>
        <translation>keine genannt</translation>
    </message>
    <message>
        <source>Change %1 of %2</source>
        <translation>%1 von %2 ändern</translation>
    </message>
    <message>
        <source>No piece selected</source>
        <translation>Keine Strähne gewählt</translation>
    </message>
    <message>
        <source>These pieces differ here.</source>
        <translation>Diese Strähnen unterscheiden sich hier.</translation>
    </message>
    <message>
        <source>stays bare</source>
        <translation>bleibt ohne Toner</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>gemischt</translation>
    </message>
    <message>
        <source>in one foil with %1</source>
        <translation>in einer Folie mit %1</translation>
    </message>
    <message>
        <source>natural</source>
        <translation>natur</translation>
    </message>
    <message>
        <source>ash</source>
        <translation>asch</translation>
    </message>
    <message>
        <source>pearl</source>
        <translation>perl</translation>
    </message>
    <message>
        <source>beige</source>
        <translation>beige</translation>
    </message>
    <message>
        <source>gold</source>
        <translation>gold</translation>
    </message>
    <message>
        <source>copper</source>
        <translation>kupfer</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rot</translation>
    </message>
    <message>
        <source>Change order of %1</source>
        <translation>Reihenfolge von %1 ändern</translation>
    </message>
    <message>
        <source>Click a piece on the sheet, or press Tab there to walk through the pieces. Shift or a frame drawn round several selects them together.</source>
        <translation>Auf dem Kopfblatt eine Strähne anklicken oder dort mit Tab durch die Strähnen gehen. Umschalt oder ein Rahmen um mehrere wählt sie gemeinsam.</translation>
    </message>
    <message>
        <source>Lifting to level 9 (8 to 10) is what every new piece comes with: type what a test strand showed.</source>
        <translation>Aufhellen auf Tonhöhe 9 (8 bis 10) bringt jede neue Strähne mit: bitte eintragen, was eine Probesträhne zeigte.</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Was sie tut</translation>
    </message>
    <message>
        <source>Lighten</source>
        <translation>Aufhellen</translation>
    </message>
    <message>
        <source>Deepen</source>
        <translation>Abdunkeln</translation>
    </message>
    <message>
        <source>A lowlight: darker than the hair</source>
        <translation>Ein Lowlight: dunkler als das Haar</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Auslassen</translation>
    </message>
    <message>
        <source>Hair deliberately not lightened</source>
        <translation>Haar, das absichtlich nicht aufgehellt wird</translation>
    </message>
    <message>
        <source>what it does</source>
        <translation>was sie tut</translation>
    </message>
    <message>
        <source>Along the strand</source>
        <translation>Entlang der Strähne</translation>
    </message>
    <message>
        <source>On the head</source>
        <translation>Auf dem Kopf</translation>
    </message>
    <message>
        <source>How it is taken</source>
        <translation>Wie sie genommen wird</translation>
    </message>
    <message>
        <source>Slice</source>
        <translation>Slice</translation>
    </message>
    <message>
        <source>The whole strip</source>
        <translation>Der ganze Streifen</translation>
    </message>
    <message>
        <source>Weave</source>
        <translation>Weben</translation>
    </message>
    <message>
        <source>Teeth and gaps</source>
        <translation>Zähne und Lücken</translation>
    </message>
    <message>
        <source>Paint</source>
        <translation>Malen</translation>
    </message>
    <message>
        <source>Brush on the surface</source>
        <translation>Mit dem Pinsel auf die Oberfläche</translation>
    </message>
    <message>
        <source>how it is taken</source>
        <translation>wie sie genommen wird</translation>
    </message>
    <message>
        <source>Underneath</source>
        <translation>Unterseite</translation>
    </message>
    <message>
        <source>Painted</source>
        <translation>Bestrichen</translation>
    </message>
    <message>
        <source>Bare</source>
        <translation>Unbestrichen</translation>
    </message>
    <message>
        <source>underneath</source>
        <translation>Unterseite</translation>
    </message>
    <message>
        <source>Drop-outs along it</source>
        <translation>Aussparungen darin</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Stretches of the piece left dark, from where to where along it, as in 40–60; 110–125</source>
        <translation>Stücke der Strähne, die dunkel bleiben, von wo bis wo, wie in 40–60; 110–125</translation>
    </message>
    <message>
        <source>“%1” is not a list of stretches. Right would be: 40–60; 110–125</source>
        <translation>„%1“ ist keine Liste von Stücken. Richtig wäre: 40–60; 110–125</translation>
    </message>
    <message>
        <source>drop-outs</source>
        <translation>Aussparungen</translation>
    </message>
    <message>
        <source>Once a level to finish at is typed</source>
        <translation>Sobald eine Endtonhöhe eingetragen ist</translation>
    </message>
    <message>
        <source>Formulas stand on the formula card; their letter is the hatch on the sheet</source>
        <translation>Rezepturen stehen auf der Rezepturkarte; ihr Buchstabe ist die Schraffur auf dem Kopfblatt</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>Formula</source>
        <translation>Rezeptur</translation>
    </message>
    <message>
        <source>formula</source>
        <translation>Rezeptur</translation>
    </message>
    <message>
        <source>Tone</source>
        <translation>Farbrichtung</translation>
    </message>
    <message>
        <source>tone</source>
        <translation>Farbrichtung</translation>
    </message>
    <message>
        <source>Colour of the ends</source>
        <translation>Farbe der Spitzen</translation>
    </message>
    <message>
        <source>Formula at the ends</source>
        <translation>Rezeptur an den Spitzen</translation>
    </message>
    <message>
        <source>formula of the ends</source>
        <translation>Rezeptur der Spitzen</translation>
    </message>
    <message>
        <source>Tone at the ends</source>
        <translation>Farbrichtung an den Spitzen</translation>
    </message>
    <message>
        <source>tone of the ends</source>
        <translation>Farbrichtung der Spitzen</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Arbeiten</translation>
    </message>
    <message>
        <source>Kept in</source>
        <translation>Liegt in</translation>
    </message>
    <message>
        <source>Foil</source>
        <translation>Folie</translation>
    </message>
    <message>
        <source>Film</source>
        <translation>Klarsichtfolie</translation>
    </message>
    <message>
        <source>Open air</source>
        <translation>Offen</translation>
    </message>
    <message>
        <source>kept in</source>
        <translation>liegt in</translation>
    </message>
    <message>
        <source>Shares foil</source>
        <translation>Teilt die Folie</translation>
    </message>
    <message>
        <source>its own</source>
        <translation>eigene</translation>
    </message>
    <message>
        <source>Pieces with the same word here share one foil</source>
        <translation>Strähnen mit demselben Wort hier teilen eine Folie</translation>
    </message>
    <message>
        <source>foil</source>
        <translation>Folie</translation>
    </message>
    <message>
        <source>Put these in one foil</source>
        <translation>Diese in eine Folie legen</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Festgehalten</translation>
    </message>
    <message>
        <source>A suggestion leaves held pieces as they are; your hand may still change them</source>
        <translation>Ein Vorschlag lässt festgehaltene Strähnen, wie sie sind; von Hand lassen sie sich weiter ändern</translation>
    </message>
    <message>
        <source>held</source>
        <translation>festgehalten</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>by number</source>
        <translation>nach Nummer</translation>
    </message>
    <message>
        <source>A name of your own for this piece</source>
        <translation>Ein eigener Name für diese Strähne</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>why it is here; shown in class and printed, so nothing about a person</source>
        <translation>warum sie hier ist; im Unterricht und im Druck zu sehen, also nichts über eine Person</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Beginn</translation>
    </message>
    <message>
        <source>blend length</source>
        <translation>Übergangslänge</translation>
    </message>
    <message>
        <source>backcomb depth</source>
        <translation>Toupiertiefe</translation>
    </message>
    <message>
        <source>handover</source>
        <translation>Übergabe</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>Starts at, off the scalp</source>
        <translation>Beginnt, über der Kopfhaut</translation>
    </message>
    <message>
        <source>Blend length</source>
        <translation>Übergangslänge</translation>
    </message>
    <message>
        <source>Backcomb depth</source>
        <translation>Toupiertiefe</translation>
    </message>
    <message>
        <source>How much is pushed back</source>
        <translation>Wie viel zurückgeschoben wird</translation>
    </message>
    <message>
        <source>pushed share</source>
        <translation>zurückgeschobener Anteil</translation>
    </message>
    <message>
        <source>Blend of the pushed hair</source>
        <translation>Übergang des zurückgeschobenen Haars</translation>
    </message>
    <message>
        <source>blend of pushed hair</source>
        <translation>Übergang des zurückgeschobenen Haars</translation>
    </message>
    <message>
        <source>End formula takes over at</source>
        <translation>Spitzenrezeptur übernimmt ab</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>Lightener stops at</source>
        <translation>Blondierung endet bei</translation>
    </message>
    <message>
        <source>ends</source>
        <translation>Spitzen</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Taken within the teeth</source>
        <translation>In den Zähnen genommen</translation>
    </message>
    <message>
        <source>taken share</source>
        <translation>genommener Anteil</translation>
    </message>
    <message>
        <source>Teeth</source>
        <translation>Zähne</translation>
    </message>
    <message>
        <source>teeth</source>
        <translation>Zähne</translation>
    </message>
    <message>
        <source>Gaps</source>
        <translation>Lücken</translation>
    </message>
    <message>
        <source>gaps</source>
        <translation>Lücken</translation>
    </message>
    <message>
        <source>Brush reaches into it</source>
        <translation>Pinsel reicht hinein</translation>
    </message>
    <message>
        <source>brush reach</source>
        <translation>Reichweite des Pinsels</translation>
    </message>
    <message>
        <source>Lifts to level</source>
        <translation>Hellt auf zu Tonhöhe</translation>
    </message>
    <message>
        <source>lifts to</source>
        <translation>hellt auf zu</translation>
    </message>
    <message>
        <source>… at the least</source>
        <translation>… mindestens</translation>
    </message>
    <message>
        <source>least lift</source>
        <translation>geringste Aufhellung</translation>
    </message>
    <message>
        <source>… at the most</source>
        <translation>… höchstens</translation>
    </message>
    <message>
        <source>most lift</source>
        <translation>stärkste Aufhellung</translation>
    </message>
    <message>
        <source>Finishes at level</source>
        <translation>Endet bei Tonhöhe</translation>
    </message>
    <message>
        <source>finishes at</source>
        <translation>endet bei</translation>
    </message>
    <message>
        <source>lifts to at the ends</source>
        <translation>hellt an den Spitzen auf zu</translation>
    </message>
    <message>
        <source>least lift at the ends</source>
        <translation>geringste Aufhellung an den Spitzen</translation>
    </message>
    <message>
        <source>most lift at the ends</source>
        <translation>stärkste Aufhellung an den Spitzen</translation>
    </message>
    <message>
        <source>finishes at, ends</source>
        <translation>endet bei, Spitzen</translation>
    </message>
    <message>
        <source>Place in the order</source>
        <translation>Platz in der Reihenfolge</translation>
    </message>
    <message>
        <source>order</source>
        <translation>Reihenfolge</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::ReadingCard</name>
    <message>
        <source>Reading</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>whole head</source>
        <translation>ganzer Kopf</translation>
    </message>
    <message>
        <source>How it came about, for</source>
        <translation>Wie er entstand, für</translation>
    </message>
    <message>
        <source>▨ Of the plan before the last change.</source>
        <translation>▨ Vom Plan vor der letzten Änderung.</translation>
    </message>
    <message>
        <source>What this choice wants here; press to set it</source>
        <translation>Was diese Variante hier will; drücken, um es zu setzen</translation>
    </message>
    <message>
        <source>Colour, in this light</source>
        <translation>Farbe, in diesem Licht</translation>
    </message>
    <message>
        <source>Lightness, L*</source>
        <translation>Helligkeit, L*</translation>
    </message>
    <message>
        <source>Range, L*</source>
        <translation>Spanne, L*</translation>
    </message>
    <message>
        <source>One assumption after the other at the ends of its range, added up as root of squares</source>
        <translation>Eine Annahme nach der anderen an den Enden ihrer Spanne, als Wurzel der Quadrate zusammengezählt</translation>
    </message>
    <message>
        <source>Sampling error</source>
        <translation>Stichprobenfehler</translation>
    </message>
    <message>
        <source>One standard deviation in L*, from working with a limited number of locks</source>
        <translation>Eine Standardabweichung in L*, weil mit einer begrenzten Zahl von Haarbüscheln gerechnet wird</translation>
    </message>
    <message>
        <source>Red or green, a*</source>
        <translation>Rot oder Grün, a*</translation>
    </message>
    <message>
        <source>Above 0 toward red, below toward green</source>
        <translation>Über 0 zum Rot hin, darunter zum Grün</translation>
    </message>
    <message>
        <source>Yellow or blue, b*</source>
        <translation>Gelb oder Blau, b*</translation>
    </message>
    <message>
        <source>Above 0 toward yellow, below toward blue</source>
        <translation>Über 0 zum Gelb hin, darunter zum Blau</translation>
    </message>
    <message>
        <source>Light and dark</source>
        <translation>Hell und Dunkel</translation>
    </message>
    <message>
        <source>Share lightened</source>
        <translation>Aufgehellter Anteil</translation>
    </message>
    <message>
        <source>Of the hair that is seen here</source>
        <translation>Von dem Haar, das hier zu sehen ist</translation>
    </message>
    <message>
        <source>Share left dark</source>
        <translation>Dunkel gelassener Anteil</translation>
    </message>
    <message>
        <source>The shadow that keeps the light apart</source>
        <translation>Der Schatten, der das Helle auseinanderhält</translation>
    </message>
    <message>
        <source>Contrast</source>
        <translation>Kontrast</translation>
    </message>
    <message>
        <source>Along the strand</source>
        <translation>Entlang der Strähne</translation>
    </message>
    <message>
        <source>Root</source>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>Middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Was zu sehen war</translation>
    </message>
    <message>
        <source>Hair</source>
        <translation>Haar</translation>
    </message>
    <message>
        <source>Area on the drawing, over all views</source>
        <translation>Fläche auf der Zeichnung, über alle Ansichten</translation>
    </message>
    <message>
        <source>Scalp showing through</source>
        <translation>Durchscheinende Kopfhaut</translation>
    </message>
    <message>
        <source>Share of hair and scalp together</source>
        <translation>Anteil an Haar und Kopfhaut zusammen</translation>
    </message>
    <message>
        <source>What moves it most</source>
        <translation>Was ihn am meisten bewegt</translation>
    </message>
    <message>
        <source>Show this assumption</source>
        <translation>Diese Annahme zeigen</translation>
    </message>
    <message>
        <source>A prediction from the plan and these assumptions, not a measurement; a test strand shows how far this hair lightens.</source>
        <translation>Eine Vorhersage aus dem Plan und diesen Annahmen, keine Messung; eine Probesträhne zeigt, wie weit dieses Haar aufhellt.</translation>
    </message>
    <message>
        <source>Set an aim…</source>
        <translation>Ziel setzen…</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Not seen: too little of this hair shows when it is worn this way.</source>
        <translation>Nicht zu sehen: So getragen zeigt sich zu wenig von diesem Haar.</translation>
    </message>
    <message>
        <source>Being worked out.</source>
        <translation>Wird berechnet.</translation>
    </message>
    <message>
        <source>pale pieces over brown, reads grey</source>
        <translation>helle Strähnen über Braun, wirkt grau</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>noch nicht bekannt</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 cm²</source>
        <translation>%1 cm²</translation>
    </message>
    <message>
        <source>%1, L* %2</source>
        <translation>%1, L* %2</translation>
    </message>
    <message>
        <source>not seen</source>
        <translation>nicht zu sehen</translation>
    </message>
    <message>
        <source>by region</source>
        <translation>nach Partie</translation>
    </message>
    <message>
        <source>Being worked out with the range.</source>
        <translation>Wird mit der Spanne berechnet.</translation>
    </message>
    <message>
        <source>No assumption moves it.</source>
        <translation>Keine Annahme bewegt ihn.</translation>
    </message>
    <message>
        <source>What moves it most: %1</source>
        <translation>Was ihn am meisten bewegt: %1</translation>
    </message>
    <message>
        <source>A prediction, not a measurement</source>
        <translation>Eine Vorhersage, keine Messung</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::SectionCard</name>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Left out between</source>
        <translation>Dazwischen ausgelassen</translation>
    </message>
    <message>
        <source>Starts at, off the scalp</source>
        <translation>Beginnt, über der Kopfhaut</translation>
    </message>
    <message>
        <source>Backcomb depth</source>
        <translation>Toupiertiefe</translation>
    </message>
    <message>
        <source>How much is pushed back</source>
        <translation>Wie viel zurückgeschoben wird</translation>
    </message>
    <message>
        <source>Taken within the teeth</source>
        <translation>In den Zähnen genommen</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Abteilung</translation>
    </message>
    <message>
        <source>No section is selected. Draw one with the section tool, or click the edge of one on the sheet.</source>
        <translation>Keine Abteilung ist gewählt. Mit dem Abteilungswerkzeug eine zeichnen oder den Rand einer Abteilung auf dem Kopfblatt anklicken.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>no name yet</source>
        <translation>noch kein Name</translation>
    </message>
    <message>
        <source>What the section is called on the sheet and in lists</source>
        <translation>Wie die Abteilung auf dem Kopfblatt und in Listen heißt</translation>
    </message>
    <message>
        <source>Name of a section</source>
        <translation>Name einer Abteilung</translation>
    </message>
    <message>
        <source>It follows the other side: a change here changes both.</source>
        <translation>Sie folgt der anderen Seite: Eine Änderung hier ändert beide.</translation>
    </message>
    <message>
        <source>Lay out: equal pieces, no backcomb</source>
        <translation>Auslegen: gleiche Strähnen, nicht toupiert</translation>
    </message>
    <message>
        <source>Lay out a section</source>
        <translation>Eine Abteilung auslegen</translation>
    </message>
    <message>
        <source>How its pieces run</source>
        <translation>Wie ihre Strähnen laufen</translation>
    </message>
    <message>
        <source>Rows</source>
        <translation>Passées</translation>
    </message>
    <message>
        <source>horizontal</source>
        <translation>waagerecht</translation>
    </message>
    <message>
        <source>vertical</source>
        <translation>senkrecht</translation>
    </message>
    <message>
        <source>diagonal forward</source>
        <translation>schräg nach vorn</translation>
    </message>
    <message>
        <source>diagonal back</source>
        <translation>schräg nach hinten</translation>
    </message>
    <message>
        <source>pivoting</source>
        <translation>drehend</translation>
    </message>
    <message>
        <source>Rows of a section</source>
        <translation>Passées einer Abteilung</translation>
    </message>
    <message>
        <source>They turn about the last round handle on the sheet; drag it (select tool).</source>
        <translation>Sie drehen um den letzten runden Griff auf dem Kopfblatt; ihn ziehen (Werkzeug Auswählen).</translation>
    </message>
    <message>
        <source>From the first piece, farthest from where the hair falls open, to the last:</source>
        <translation>Von der ersten Strähne, am weitesten von der Stelle, wo das Haar auseinanderfällt, bis zur letzten:</translation>
    </message>
    <message>
        <source>Taken as</source>
        <translation>Genommen als</translation>
    </message>
    <message>
        <source>slice</source>
        <translation>Slice</translation>
    </message>
    <message>
        <source>weave</source>
        <translation>gewebt</translation>
    </message>
    <message>
        <source>paint</source>
        <translation>gemalt</translation>
    </message>
    <message>
        <source>How pieces are taken</source>
        <translation>Wie Strähnen genommen werden</translation>
    </message>
    <message>
        <source>Teeth of a weave</source>
        <translation>Zähne einer gewebten Strähne</translation>
    </message>
    <message>
        <source>Gaps between teeth</source>
        <translation>Lücken zwischen den Zähnen</translation>
    </message>
    <message>
        <source>Foils</source>
        <translation>Folien</translation>
    </message>
    <message>
        <source>Foil width; a longer row becomes columns</source>
        <translation>Folienbreite; eine längere Passée wird zu Spalten</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>In line</source>
        <translation>In einer Linie</translation>
    </message>
    <message>
        <source>Staggered</source>
        <translation>Versetzt</translation>
    </message>
    <message>
        <source>Every other row begins half a foil later</source>
        <translation>Jede zweite Passée beginnt eine halbe Folie später</translation>
    </message>
    <message>
        <source>Columns of a section</source>
        <translation>Spalten einer Abteilung</translation>
    </message>
    <message>
        <source>Where the hair falls open</source>
        <translation>Wo das Haar auseinanderfällt</translation>
    </message>
    <message>
        <source>Last piece, beside where it opens</source>
        <translation>Letzte Strähne, neben der Öffnung</translation>
    </message>
    <message>
        <source>like the others</source>
        <translation>wie die anderen</translation>
    </message>
    <message>
        <source>Middle left dark, across the centre line</source>
        <translation>Mitte dunkel gelassen, quer über die Mittellinie</translation>
    </message>
    <message>
        <source>Zigzag parting swings</source>
        <translation>Zickzacklinie schwingt</translation>
    </message>
    <message>
        <source>All pieces follow this rule again</source>
        <translation>Alle Strähnen folgen wieder dieser Regel</translation>
    </message>
    <message>
        <source>What was edited by hand on its pieces goes back to the rule; emptied places are filled</source>
        <translation>Was an ihren Strähnen von Hand geändert wurde, geht zur Regel zurück; geleerte Plätze werden gefüllt</translation>
    </message>
    <message>
        <source>Take the rule away, keep the pieces</source>
        <translation>Regel wegnehmen, Strähnen behalten</translation>
    </message>
    <message>
        <source>Follow the section</source>
        <translation>Der Abteilung folgen</translation>
    </message>
    <message>
        <source>Take a section&apos;s rule away</source>
        <translation>Die Regel einer Abteilung wegnehmen</translation>
    </message>
    <message>
        <source>first</source>
        <translation>erste</translation>
    </message>
    <message>
        <source>last</source>
        <translation>letzte</translation>
    </message>
    <message>
        <source>%1, first piece</source>
        <translation>%1, erste Strähne</translation>
    </message>
    <message>
        <source>%1, last piece</source>
        <translation>%1, letzte Strähne</translation>
    </message>
    <message>
        <source>Not laid out: what is drawn in it stands by itself.</source>
        <translation>Nicht ausgelegt: Was darin gezeichnet ist, steht für sich.</translation>
    </message>
    <message>
        <source>%1 in %2 of room</source>
        <translation>%1 auf %2 Platz</translation>
    </message>
    <message>
        <source>1 row</source>
        <translation>1 Passée</translation>
    </message>
    <message>
        <source>%1 rows</source>
        <translation>%1 Passées</translation>
    </message>
    <message>
        <source>The outline crosses itself. Its pieces stay as they were until a corner is moved.</source>
        <translation>Der Umriss kreuzt sich. Die Strähnen bleiben, wie sie waren, bis eine Ecke verschoben wird.</translation>
    </message>
    <message>
        <source>There is no room for half a piece: %1 of room. Its pieces stay as they were until it is larger or they are thinner.</source>
        <translation>Kein Platz für eine halbe Strähne: %1 Platz. Die Strähnen bleiben, wie sie waren, bis die Abteilung größer ist oder die Strähnen dünner sind.</translation>
    </message>
    <message>
        <source>That would be more pieces than a section may have. Its pieces stay as they were: make them thicker, or leave more out.</source>
        <translation>Das wären mehr Strähnen, als eine Abteilung haben darf. Die Strähnen bleiben, wie sie waren: dicker machen oder mehr auslassen.</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::StrandDrawing</name>
    <message>
        <source>starts from the scalp</source>
        <translation>beginnt an der Kopfhaut</translation>
    </message>
    <message>
        <source>starts %1 off the scalp</source>
        <translation>beginnt %1 über der Kopfhaut</translation>
    </message>
    <message>
        <source>blends over %1</source>
        <translation>geht über auf %1</translation>
    </message>
    <message>
        <source>no backcomb</source>
        <translation>nicht toupiert</translation>
    </message>
    <message>
        <source>backcomb depth %1</source>
        <translation>Toupiertiefe %1</translation>
    </message>
    <message>
        <source>end formula from %1</source>
        <translation>Spitzenrezeptur ab %1</translation>
    </message>
    <message>
        <source>one formula throughout</source>
        <translation>durchgehend eine Rezeptur</translation>
    </message>
    <message>
        <source>stops at %1</source>
        <translation>endet bei %1</translation>
    </message>
    <message>
        <source>through the ends</source>
        <translation>bis durch die Spitzen</translation>
    </message>
    <message>
        <source>Strand from root to ends</source>
        <translation>Strähne vom Ansatz bis zu den Spitzen</translation>
    </message>
    <message>
        <source>no piece selected</source>
        <translation>keine Strähne gewählt</translation>
    </message>
    <message>
        <source>handle: %1</source>
        <translation>Griff: %1</translation>
    </message>
    <message>
        <source>up and down choose a handle, left and right move it</source>
        <translation>auf und ab wählen einen Griff, links und rechts bewegen ihn</translation>
    </message>
    <message>
        <source>Select a piece to see its strand.</source>
        <translation>Eine Strähne wählen, um ihren Verlauf zu sehen.</translation>
    </message>
    <message>
        <source>share of light hair, %</source>
        <translation>Anteil hellen Haars, %</translation>
    </message>
    <message>
        <source>root</source>
        <translation>Ansatz</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::StretchList</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1: where</source>
        <translation>%1: wo</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::TargetEditor</name>
    <message>
        <source>What is wanted</source>
        <translation>Was gewünscht ist</translation>
    </message>
    <message>
        <source>Aims of this choice, region by region. They stand beside the readings; leave empty what does not matter.</source>
        <translation>Ziele dieser Variante, Partie für Partie. Sie stehen neben den Werten; leer lassen, was keine Rolle spielt.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>any</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Tonhöhe</translation>
    </message>
    <message>
        <source>Contrast</source>
        <translation>Kontrast</translation>
    </message>
    <message>
        <source>contrast</source>
        <translation>Kontrast</translation>
    </message>
    <message>
        <source>Lightest allowed</source>
        <translation>Hellstes erlaubt</translation>
    </message>
    <message>
        <source>Darkest allowed</source>
        <translation>Dunkelstes erlaubt</translation>
    </message>
    <message>
        <source>No aim here</source>
        <translation>Hier kein Ziel</translation>
    </message>
    <message>
        <source>Take the aim for this region away</source>
        <translation>Das Ziel für diese Partie wegnehmen</translation>
    </message>
    <message>
        <source>aim</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>Aim: %1, %2</source>
        <translation>Ziel: %1, %2</translation>
    </message>
    <message>
        <source>This contradicts itself: the level must lie between the darkest and the lightest allowed.</source>
        <translation>Das widerspricht sich: Die Tonhöhe muss zwischen dem erlaubten Dunkelsten und Hellsten liegen.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>No aim yet.</source>
        <translation>Noch kein Ziel.</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::TestList</name>
    <message>
        <source>Tests</source>
        <translation>Tests</translation>
    </message>
    <message>
        <source>None written down. Add one before it is made, or with its date and result.</source>
        <translation>Keine notiert. Einen hinzufügen, bevor er gemacht wird, oder mit Datum und Ergebnis.</translation>
    </message>
    <message>
        <source>Kind of test</source>
        <translation>Art des Tests</translation>
    </message>
    <message>
        <source>Add test</source>
        <translation>Test hinzufügen</translation>
    </message>
    <message>
        <source>Tested on</source>
        <translation>Getestet am</translation>
    </message>
    <message>
        <source>YYYY-MM-DD</source>
        <translation>JJJJ-MM-TT</translation>
    </message>
    <message>
        <source>Empty while the test is not made yet</source>
        <translation>Leer, solange der Test noch nicht gemacht ist</translation>
    </message>
    <message>
        <source>What came of it</source>
        <translation>Was dabei herauskam</translation>
    </message>
    <message>
        <source>in your own words</source>
        <translation>in Ihren eigenen Worten</translation>
    </message>
    <message>
        <source>Due again on</source>
        <translation>Wieder fällig am</translation>
    </message>
    <message>
        <source>by your policy</source>
        <translation>nach Ihrer Regel</translation>
    </message>
    <message>
        <source>As label, insurer or your own rule asks; empty goes by your policy in Preferences</source>
        <translation>Wie Etikett, Versicherung oder Ihre eigene Regel es verlangt; leer gilt Ihre Regel aus den Einstellungen</translation>
    </message>
    <message>
        <source>Remove this test</source>
        <translation>Diesen Test entfernen</translation>
    </message>
    <message>
        <source>What was written down about this test is gone then.</source>
        <translation>Was zu diesem Test notiert wurde, ist dann weg.</translation>
    </message>
    <message>
        <source>Remove it for good</source>
        <translation>Endgültig entfernen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
</context>
<context>
    <name>combdraft::cards::ZoneTable</name>
    <message>
        <source>root</source>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>ends</source>
        <translation>Spitzen</translation>
    </message>
    <message>
        <source>All zones</source>
        <translation>Alle Zonen</translation>
    </message>
    <message>
        <source>%1, length</source>
        <translation>%1, Länge</translation>
    </message>
    <message>
        <source>%1, level at the root</source>
        <translation>%1, Tonhöhe am Ansatz</translation>
    </message>
    <message>
        <source>%1, level in the middle</source>
        <translation>%1, Tonhöhe in der Mitte</translation>
    </message>
    <message>
        <source>%1, level at the ends</source>
        <translation>%1, Tonhöhe an den Spitzen</translation>
    </message>
    <message>
        <source>length, %1</source>
        <translation>Länge, %1</translation>
    </message>
    <message>
        <source>Our default: own assumption.</source>
        <translation>Unsere Vorgabe: eigene Annahme.</translation>
    </message>
    <message>
        <source>The zones differ here.</source>
        <translation>Die Zonen unterscheiden sich hier.</translation>
    </message>
</context>
<context>
    <name>combdraft::chair::BlankSheet</name>
    <message>
        <source>Blank head to draw on</source>
        <translation>Leerer Kopf zum Zeichnen</translation>
    </message>
    <message>
        <source>Backspace takes the last line back, Delete wipes the sheet</source>
        <translation>Rücktaste nimmt die letzte Linie zurück, Entf wischt das Blatt</translation>
    </message>
</context>
<context>
    <name>combdraft::chair::ChairView</name>
    <message>
        <source>Part: where it usually is</source>
        <translation>Scheitel: wo er gewöhnlich ist</translation>
    </message>
    <message>
        <source>Part: a little to your right</source>
        <translation>Scheitel: etwas zu Ihrer rechten Seite</translation>
    </message>
    <message>
        <source>Part: a little to your left</source>
        <translation>Scheitel: etwas zu Ihrer linken Seite</translation>
    </message>
    <message>
        <source>Part: to your right</source>
        <translation>Scheitel: zu Ihrer rechten Seite</translation>
    </message>
    <message>
        <source>Part: to your left</source>
        <translation>Scheitel: zu Ihrer linken Seite</translation>
    </message>
    <message>
        <source>Part: far to your right</source>
        <translation>Scheitel: weit zu Ihrer rechten Seite</translation>
    </message>
    <message>
        <source>Part: far to your left</source>
        <translation>Scheitel: weit zu Ihrer linken Seite</translation>
    </message>
    <message>
        <source>When: on the day</source>
        <translation>Wann: am Tag selbst</translation>
    </message>
    <message>
        <source>When: 1 week later</source>
        <translation>Wann: 1 Woche später</translation>
    </message>
    <message>
        <source>When: %1 weeks later</source>
        <translation>Wann: %1 Wochen später</translation>
    </message>
    <message>
        <source>For the client</source>
        <translation>Kundenansicht</translation>
    </message>
    <message>
        <source>“This one” keeps the picture, its range and today’s date with the plan.</source>
        <translation>„Dieses“ bewahrt das Bild, seine Spanne und das heutige Datum mit dem Plan auf.</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Choice %1</source>
        <translation>Variante %1</translation>
    </message>
    <message>
        <source>Left picture: %1</source>
        <translation>Linkes Bild: %1</translation>
    </message>
    <message>
        <source>Right picture: %1</source>
        <translation>Rechtes Bild: %1</translation>
    </message>
    <message>
        <source>This one: %1</source>
        <translation>Dieses: %1</translation>
    </message>
    <message>
        <source>This one: %1, keep it with the plan</source>
        <translation>Dieses: %1, mit dem Plan aufbewahren</translation>
    </message>
    <message>
        <source>Part: the top is tied</source>
        <translation>Scheitel: Der Oberkopf ist gebunden</translation>
    </message>
    <message>
        <source>◔ first estimate</source>
        <translation>◔ erste Schätzung</translation>
    </message>
    <message>
        <source>◔ being worked out</source>
        <translation>◔ wird berechnet</translation>
    </message>
    <message>
        <source>What stays dark: being worked out.</source>
        <translation>Was dunkel bleibt: wird berechnet.</translation>
    </message>
    <message>
        <source>The picture is still being worked out. Touch “This one” again when it stands.</source>
        <translation>Das Bild wird noch berechnet. „Dieses“ noch einmal antippen, wenn es steht.</translation>
    </message>
    <message>
        <source>what was agreed does not fit into the plan</source>
        <translation>was vereinbart wurde, passt nicht in den Plan</translation>
    </message>
    <message>
        <source>this plan may only be looked at here</source>
        <translation>dieser Plan darf hier nur angesehen werden</translation>
    </message>
    <message>
        <source>the plan has no room for it</source>
        <translation>der Plan hat keinen Platz dafür</translation>
    </message>
    <message>
        <source>⚠ This was not kept: %1.</source>
        <translation>⚠ Das wurde nicht aufbewahrt: %1.</translation>
    </message>
    <message>
        <source>⚠ The picture cannot be worked out: %1</source>
        <translation>⚠ Das Bild lässt sich nicht berechnen: %1</translation>
    </message>
    <message>
        <source>To leave, hold “%1”, or the Escape key, for two seconds.</source>
        <translation>Zum Verlassen „%1“ oder die Escape-Taste zwei Sekunden halten.</translation>
    </message>
    <message>
        <source>Seen from</source>
        <translation>Gesehen von</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Vorn</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Hinten</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>Oben</translation>
    </message>
    <message>
        <source>Readings and choice</source>
        <translation>Werte und Wahl</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Bilder</translation>
    </message>
    <message>
        <source>One head</source>
        <translation>Ein Kopf</translation>
    </message>
    <message>
        <source>Two heads</source>
        <translation>Zwei Köpfe</translation>
    </message>
    <message>
        <source>The front</source>
        <translation>Die Vorderseite</translation>
    </message>
    <message>
        <source>As in the mirror</source>
        <translation>Wie im Spiegel</translation>
    </message>
    <message>
        <source>As others see you</source>
        <translation>Wie andere Sie sehen</translation>
    </message>
    <message>
        <source>Hold to leave</source>
        <translation>Zum Verlassen halten</translation>
    </message>
    <message>
        <source>How you wear it</source>
        <translation>Wie Sie es tragen</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Offen</translation>
    </message>
    <message>
        <source>Part moved</source>
        <translation>Scheitel verschoben</translation>
    </message>
    <message>
        <source>Half up</source>
        <translation>Halb hochgesteckt</translation>
    </message>
    <message>
        <source>Tied back</source>
        <translation>Zurückgebunden</translation>
    </message>
    <message>
        <source>Crown opened</source>
        <translation>Wirbel geöffnet</translation>
    </message>
    <message>
        <source>Part moved to your left or right</source>
        <translation>Scheitel zu Ihrer linken oder rechten Seite verschoben</translation>
    </message>
    <message>
        <source>Weeks later</source>
        <translation>Wochen später</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <source>Daylight</source>
        <translation>Tageslicht</translation>
    </message>
    <message>
        <source>Overcast</source>
        <translation>Bedeckter Himmel</translation>
    </message>
    <message>
        <source>Warm lamp</source>
        <translation>Warme Lampe</translation>
    </message>
    <message>
        <source>Office light</source>
        <translation>Bürolicht</translation>
    </message>
    <message>
        <source>Left picture</source>
        <translation>Linkes Bild</translation>
    </message>
    <message>
        <source>Right picture</source>
        <translation>Rechtes Bild</translation>
    </message>
    <message>
        <source>As planned</source>
        <translation>Wie geplant</translation>
    </message>
    <message>
        <source>“This one” keeps the picture as planned, on the day, in daylight.</source>
        <translation>„Dieses“ behält das Bild wie geplant, am Tag selbst, bei Tageslicht.</translation>
    </message>
    <message>
        <source>Agreed</source>
        <translation>Vereinbart</translation>
    </message>
    <message>
        <source>%1
agreed</source>
        <translation>%1
vereinbart</translation>
    </message>
    <message>
        <source>✓ Noted in the plan; it goes into the file with the next save. %1 as planned, on the day, in daylight, its range, and the date %2.</source>
        <translation>✓ Im Plan vermerkt; in die Datei kommt es mit dem nächsten Speichern. %1 wie geplant, am Tag selbst, bei Tageslicht, mit Spanne, und das Datum %2.</translation>
    </message>
    <message>
        <source>✓ Noted in the plan; it goes into the file with the next save. %1 as planned, on the day, in daylight, and the date %2. Its range was still being worked out: touch again later to keep it too.</source>
        <translation>✓ Im Plan vermerkt; in die Datei kommt es mit dem nächsten Speichern. %1 wie geplant, am Tag selbst, bei Tageslicht, und das Datum %2. Die Spanne war noch nicht ausgerechnet: später noch einmal berühren, um auch sie aufzubewahren.</translation>
    </message>
    <message>
        <source>If it lightens less or more</source>
        <translation>Wenn es weniger oder mehr aufhellt</translation>
    </message>
    <message>
        <source>If less</source>
        <translation>Wenn weniger</translation>
    </message>
    <message>
        <source>If more</source>
        <translation>Wenn mehr</translation>
    </message>
</context>
<context>
    <name>combdraft::chair::ClassView</name>
    <message>
        <source>For a class</source>
        <translation>Für eine Klasse</translation>
    </message>
    <message>
        <source>◔ first estimate</source>
        <translation>◔ erste Schätzung</translation>
    </message>
    <message>
        <source>◔ being worked out</source>
        <translation>◔ wird berechnet</translation>
    </message>
    <message>
        <source>The teacher’s plan</source>
        <translation>Der Plan der Lehrkraft</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>The crown opened</source>
        <translation>Der Wirbel geöffnet</translation>
    </message>
    <message>
        <source>All foils, worn down</source>
        <translation>Alle Folien, offen getragen</translation>
    </message>
    <message>
        <source>The look so far</source>
        <translation>Der Look bis hierher</translation>
    </message>
    <message>
        <source>The placement</source>
        <translation>Die Platzierung</translation>
    </message>
    <message>
        <source>Close the sheet</source>
        <translation>Das Blatt schließen</translation>
    </message>
    <message>
        <source>Blank sheet</source>
        <translation>Leeres Blatt</translation>
    </message>
    <message>
        <source>Back to the steps</source>
        <translation>Zurück zu den Schritten</translation>
    </message>
    <message>
        <source>Student’s plan…</source>
        <translation>Plan der Lernenden…</translation>
    </message>
    <message>
        <source>Choice %1</source>
        <translation>Variante %1</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Today, nothing planned yet</source>
        <translation>Heute, noch nichts geplant</translation>
    </message>
    <message>
        <source>This choice has no pieces. Draw or lay out some at the desk, then come back.</source>
        <translation>Diese Variante hat keine Strähnen. Zeichnen oder legen Sie am Arbeitsplatz welche aus und kommen Sie dann zurück.</translation>
    </message>
    <message>
        <source>Before the crown opens</source>
        <translation>Bevor der Wirbel geöffnet wird</translation>
    </message>
    <message>
        <source>What will show where the hair opens at the crown? Say it or draw it on the blank sheet. The next step opens the crown.</source>
        <translation>Was zeigt sich, wo das Haar am Wirbel auseinanderfällt? Sagen Sie es oder zeichnen Sie es auf das leere Blatt. Der nächste Schritt öffnet den Wirbel.</translation>
    </message>
    <message>
        <source>Look for</source>
        <translation>Achten auf</translation>
    </message>
    <message>
        <source>A block of light, a block of dark, or light and dark in turn.</source>
        <translation>Einen hellen Block, einen dunklen Block oder Hell und Dunkel im Wechsel.</translation>
    </message>
    <message>
        <source>The hand spreads the hair at the swirl. Compare it with what was said and drawn; the sheet is kept.</source>
        <translation>Die Hand spreizt das Haar am Wirbel. Mit dem vergleichen, was gesagt und gezeichnet wurde; das Blatt ist aufbewahrt.</translation>
    </message>
    <message>
        <source>Talk about</source>
        <translation>Besprechen</translation>
    </message>
    <message>
        <source>What shows as expected, what does not, and which foil makes it.</source>
        <translation>Was sich zeigt wie erwartet, was nicht, und welche Folie es macht.</translation>
    </message>
    <message>
        <source>Two plans side by side</source>
        <translation>Zwei Pläne nebeneinander</translation>
    </message>
    <message>
        <source>On the whole both look as light.</source>
        <translation>Insgesamt wirken beide gleich hell.</translation>
    </message>
    <message>
        <source>On the whole the student’s looks %1 levels lighter.</source>
        <translation>Insgesamt wirkt der Plan der Lernenden %1 Tonhöhen heller.</translation>
    </message>
    <message>
        <source>On the whole the student’s looks %1 levels darker.</source>
        <translation>Insgesamt wirkt der Plan der Lernenden %1 Tonhöhen dunkler.</translation>
    </message>
    <message>
        <source>Light hair: %1 % in the teacher’s, %2 % in the student’s.</source>
        <translation>Helles Haar: %1 % bei der Lehrkraft, %2 % bei den Lernenden.</translation>
    </message>
    <message>
        <source>The looks are being worked out.</source>
        <translation>Die Looks werden berechnet.</translation>
    </message>
    <message>
        <source>Pieces: %1 in the teacher’s, %2 in the student’s.</source>
        <translation>Strähnen: %1 bei der Lehrkraft, %2 bei den Lernenden.</translation>
    </message>
    <message>
        <source>What differs, from the teacher’s to the student’s</source>
        <translation>Was sich unterscheidet, von der Lehrkraft zu den Lernenden</translation>
    </message>
    <message>
        <source>Nothing: both plans say the same.</source>
        <translation>Nichts: Beide Pläne sagen dasselbe.</translation>
    </message>
    <message>
        <source>⚠ %1</source>
        <translation>⚠ %1</translation>
    </message>
    <message>
        <source>Seen from</source>
        <translation>Gesehen von</translation>
    </message>
    <message>
        <source>Follow</source>
        <translation>Mitgehen</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Vorn</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Hinten</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Oben</translation>
    </message>
    <message>
        <source>Crown</source>
        <translation>Wirbelpartie</translation>
    </message>
    <message>
        <source>What is placed, and why</source>
        <translation>Was platziert wird und warum</translation>
    </message>
    <message>
        <source>Take the last line back</source>
        <translation>Die letzte Linie zurücknehmen</translation>
    </message>
    <message>
        <source>Wipe the sheet</source>
        <translation>Das Blatt wischen</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Verlassen</translation>
    </message>
    <message>
        <source>Leave the class view</source>
        <translation>Die Klassenansicht verlassen</translation>
    </message>
    <message>
        <source>Place the next</source>
        <translation>Die nächste auftragen</translation>
    </message>
    <message>
        <source>Open the crown</source>
        <translation>Wirbel öffnen</translation>
    </message>
    <message>
        <source>All are placed</source>
        <translation>Alle sind aufgetragen</translation>
    </message>
    <message>
        <source>Close the crown</source>
        <translation>Wirbel schließen</translation>
    </message>
    <message>
        <source>Back to the last</source>
        <translation>Zurück zur letzten</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Wieder wegnehmen</translation>
    </message>
    <message>
        <source>%1, pieces: %2. The hair as it came in.</source>
        <translation>%1, Strähnen: %2. Das Haar, wie es heute ist.</translation>
    </message>
    <message>
        <source>Pieces %1</source>
        <translation>Strähnen %1</translation>
    </message>
    <message>
        <source>%1 (step %2 on the sheet)</source>
        <translation>%1 (Schritt %2 auf dem Handzettel)</translation>
    </message>
    <message>
        <source>%1 (steps %2 on the sheet)</source>
        <translation>%1 (Schritte %2 auf dem Handzettel)</translation>
    </message>
    <message>
        <source>The student’s plan</source>
        <translation>Der Plan der Lernenden</translation>
    </message>
    <message>
        <source>Opens a list of files that everybody sees: keep students’ plans in a folder of their own</source>
        <translation>Öffnet eine Liste von Dateien, die alle sehen: Pläne von Lernenden in einem eigenen Ordner aufbewahren</translation>
    </message>
</context>
<context>
    <name>combdraft::chair::PairPicture</name>
    <message>
        <source>Front, as in the mirror</source>
        <translation>Vorn, wie im Spiegel</translation>
    </message>
    <message>
        <source>Front, as others see you</source>
        <translation>Vorn, wie andere Sie sehen</translation>
    </message>
    <message>
        <source>Back, as others see you</source>
        <translation>Hinten, wie andere Sie sehen</translation>
    </message>
    <message>
        <source>Your left side</source>
        <translation>Ihre linke Seite</translation>
    </message>
    <message>
        <source>Your right side</source>
        <translation>Ihre rechte Seite</translation>
    </message>
    <message>
        <source>From above</source>
        <translation>Von oben</translation>
    </message>
    <message>
        <source>Crown, close up</source>
        <translation>Wirbelpartie, ganz nah</translation>
    </message>
    <message>
        <source>Picture: %1 on the left, %2 on the right; %3</source>
        <translation>Bild: %1 links, %2 rechts; %3</translation>
    </message>
    <message>
        <source>Left and Right pull the divider, now at %1 %. Plus and minus enlarge, Shift with arrows moves, 0 shows all again. %2</source>
        <translation>Links und Rechts ziehen den Teiler, jetzt bei %1 %. Plus und Minus vergrößern, Umschalt mit Pfeilen verschiebt, 0 zeigt wieder alles. %2</translation>
    </message>
</context>
<context>
    <name>combdraft::controls::NumberField</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Exactly %1.</source>
        <translation>Genau %1.</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>gemischt</translation>
    </message>
    <message>
        <source>“%1” is not a number. Allowed: %2.</source>
        <translation>„%1“ ist keine Zahl. Erlaubt: %2.</translation>
    </message>
    <message>
        <source>%1 is outside %2.</source>
        <translation>%1 liegt außerhalb von %2.</translation>
    </message>
</context>
<context>
    <name>combdraft::controls::Segments</name>
    <message>
        <source>mixed</source>
        <translation>gemischt</translation>
    </message>
</context>
<context>
    <name>combdraft::controls::TextBox</name>
    <message>
        <source>mixed</source>
        <translation>gemischt</translation>
    </message>
    <message>
        <source>Too long to be kept; about %1 letters are. Shorten it.</source>
        <translation>Zu lang, um behalten zu werden; etwa %1 Zeichen gehen. Bitte kürzen.</translation>
    </message>
</context>
<context>
    <name>combdraft::controls::TextField</name>
    <message>
        <source>mixed</source>
        <translation>gemischt</translation>
    </message>
    <message>
        <source>“%1” is not a date. Right would be: 2026-03-14</source>
        <translation>„%1“ ist kein Datum. Richtig wäre: 2026-03-14</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::CardColumn</name>
    <message>
        <source>Cards</source>
        <translation>Karten</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Karte</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Strähne</translation>
    </message>
    <message>
        <source>The selected pieces</source>
        <translation>Die gewählten Strähnen</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Abteilung</translation>
    </message>
    <message>
        <source>The selected section and the rule that lays it out</source>
        <translation>Die gewählte Abteilung und die Regel, die sie auslegt</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Kopf</translation>
    </message>
    <message>
        <source>Measures, part, swirls</source>
        <translation>Maße, Scheitel, Wirbel</translation>
    </message>
    <message>
        <source>Hair</source>
        <translation>Haar</translation>
    </message>
    <message>
        <source>How much, how long, which level</source>
        <translation>Wie viel, wie lang, welche Tonhöhe</translation>
    </message>
    <message>
        <source>Formula</source>
        <translation>Rezeptur</translation>
    </message>
    <message>
        <source>Mixtures as typed from their leaflets</source>
        <translation>Mischungen, wie aus ihren Gebrauchsanweisungen eingetragen</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Änderungen</translation>
    </message>
    <message>
        <source>What was changed; choose a line to go back to it</source>
        <translation>Was geändert wurde; eine Zeile wählen, um dorthin zurückzugehen</translation>
    </message>
    <message>
        <source>Piece card</source>
        <translation>Strähnenkarte</translation>
    </message>
    <message>
        <source>Section card</source>
        <translation>Abteilungskarte</translation>
    </message>
    <message>
        <source>Head card</source>
        <translation>Kopfkarte</translation>
    </message>
    <message>
        <source>Hair card</source>
        <translation>Haarkarte</translation>
    </message>
    <message>
        <source>Formula card</source>
        <translation>Rezepturkarte</translation>
    </message>
    <message>
        <source>As it was opened</source>
        <translation>Wie beim Öffnen</translation>
    </message>
    <message>
        <source>Choices card</source>
        <translation>Variantenkarte</translation>
    </message>
    <message>
        <source>Assumptions card</source>
        <translation>Annahmenkarte</translation>
    </message>
    <message>
        <source>Reading card</source>
        <translation>Wertkarte</translation>
    </message>
    <message>
        <source>Suggestion card</source>
        <translation>Vorschlagskarte</translation>
    </message>
    <message>
        <source>What was changed</source>
        <translation>Was geändert wurde</translation>
    </message>
    <message>
        <source>Consultation card</source>
        <translation>Beratungskarte</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::ClientsPage</name>
    <message>
        <source>Clients</source>
        <translation>Kundenakten</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Your time for keeping counts anew from today</source>
        <translation>Ihre Frist zum Aufbewahren zählt ab heute neu</translation>
    </message>
    <message>
        <source>Hand over what is kept…</source>
        <translation>Aushändigen, was aufbewahrt wird…</translation>
    </message>
    <message>
        <source>A folder that the client can read: text, JSON and photos</source>
        <translation>Ein lesbarer Ordner zum Mitgeben: Text, JSON und Fotos</translation>
    </message>
    <message>
        <source>Delete this client</source>
        <translation>Diese Kundenakte löschen</translation>
    </message>
    <message>
        <source>All that is kept of this client goes for good, with unsaved work and earlier versions of the plans of this client. The plan files stay, and so do copies elsewhere.</source>
        <translation>Alles, was zu dieser Person aufbewahrt wird, wird endgültig gelöscht, mit nicht gespeicherter Arbeit und früheren Ständen der Pläne zu ihr. Die Plandateien bleiben, und auch Kopien anderswo.</translation>
    </message>
    <message>
        <source>Delete for good</source>
        <translation>Endgültig löschen</translation>
    </message>
    <message>
        <source>number %1: cannot be read</source>
        <translation>Nummer %1: nicht lesbar</translation>
    </message>
    <message>
        <source>⚠ %1 (over your time)</source>
        <translation>⚠ %1 (über Ihrer Frist)</translation>
    </message>
    <message>
        <source>Nothing is kept of any client.</source>
        <translation>Es wird keine Kundenakte aufbewahrt.</translation>
    </message>
    <message>
        <source>Kept on this computer in a folder that only your login can open; not encrypted unless your disk is.</source>
        <translation>Aufbewahrt auf diesem Rechner in einem Ordner, den nur Ihre Anmeldung öffnen kann; verschlüsselt nur, wenn Ihr Datenträger es ist.</translation>
    </message>
    <message>
        <source>You set no time for keeping them (Preferences).</source>
        <translation>Sie haben keine Frist zum Aufbewahren gesetzt (Einstellungen).</translation>
    </message>
    <message>
        <source>Over the %1 months that you set: %2. Nothing is deleted by itself.</source>
        <translation>Über den %1 Monaten, die Sie gesetzt haben: %2. Nichts wird von selbst gelöscht.</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::CommandSearch</name>
    <message>
        <source>Find a command</source>
        <translation>Einen Befehl finden</translation>
    </message>
    <message>
        <source>Find a command: type a word of what you want to do</source>
        <translation>Einen Befehl finden: ein Wort eingeben von dem, was Sie tun möchten</translation>
    </message>
    <message>
        <source>Commands found</source>
        <translation>Gefundene Befehle</translation>
    </message>
    <message>
        <source>Not now. %1</source>
        <translation>Jetzt nicht. %1</translation>
    </message>
    <message>
        <source>No command has “%1” in its name or its tip. Try one plain word, such as “piece”, “view” or “save”.</source>
        <translation>Kein Befehl hat „%1“ im Namen oder im Hinweis. Ein einfaches Wort versuchen, etwa „Strähne“, „Ansicht“ oder „Speichern“.</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::CompareView</name>
    <message>
        <source>the same</source>
        <translation>gleich</translation>
    </message>
    <message>
        <source>%1 lighter</source>
        <translation>%1 heller</translation>
    </message>
    <message>
        <source>%1 darker</source>
        <translation>%1 dunkler</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>Seen from</source>
        <translation>Gesehen aus</translation>
    </message>
    <message>
        <source>Back to the sheet</source>
        <translation>Zurück zum Kopfblatt</translation>
    </message>
    <message>
        <source>Escape does it too</source>
        <translation>Escape tut es auch</translation>
    </message>
    <message>
        <source>Left side</source>
        <translation>Linke Seite</translation>
    </message>
    <message>
        <source>Right side</source>
        <translation>Rechte Seite</translation>
    </message>
    <message>
        <source>A picture of the plan, not a promise; a test strand shows how far this hair lightens.</source>
        <translation>Ein Bild des Plans, kein Versprechen; eine Probesträhne zeigt, wie weit dieses Haar aufhellt.</translation>
    </message>
    <message>
        <source>Readings side by side</source>
        <translation>Werte nebeneinander</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Look of %1, %2</source>
        <translation>Look von %1, %2</translation>
    </message>
    <message>
        <source>◔ first estimate</source>
        <translation>◔ erste Schätzung</translation>
    </message>
    <message>
        <source>▨ before the last change</source>
        <translation>▨ vor der letzten Änderung</translation>
    </message>
    <message>
        <source>◔ being worked out</source>
        <translation>◔ wird berechnet</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>The right is</source>
        <translation>Das rechte ist</translation>
    </message>
    <message>
        <source>Aim of the right</source>
        <translation>Ziel rechts</translation>
    </message>
    <message>
        <source>not seen</source>
        <translation>nicht zu sehen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::FaultPage</name>
    <message>
        <source>Reports of faults</source>
        <translation>Fehlerberichte</translation>
    </message>
    <message>
        <source>Where in the program it ended itself, and what it was doing. A report holds no title, note, name and no folder. This program sends nothing: if you want to tell its makers, read the report, copy it, and send it yourself.</source>
        <translation>Wo im Programm es sich selbst beendet hat und was es gerade tat. Ein Bericht enthält keinen Titel, keine Notiz, keinen Namen und keinen Ordner. Dieses Programm sendet nichts: Wenn Sie es seinen Machern sagen möchten, lesen Sie den Bericht, kopieren Sie ihn und senden Sie ihn selbst.</translation>
    </message>
    <message>
        <source>Reports</source>
        <translation>Berichte</translation>
    </message>
    <message>
        <source>There are no reports.</source>
        <translation>Es gibt keine Berichte.</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Takes the reports off this computer</source>
        <translation>Nimmt die Berichte von diesem Rechner</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::FindingDetail</name>
    <message>
        <source>Against the aim set for this choice.</source>
        <translation>Gemessen am Ziel, das für diese Variante gesetzt ist.</translation>
    </message>
    <message>
        <source>By a rule of our own; common practice, no source.</source>
        <translation>Nach einer eigenen Regel; übliche Praxis, ohne Quelle.</translation>
    </message>
    <message>
        <source>The limit is %1 %2 (%3). %4</source>
        <translation>Die Grenze ist %1 %2 (%3). %4</translation>
    </message>
    <message>
        <source>changed by you</source>
        <translation>von Ihnen geändert</translation>
    </message>
    <message>
        <source>A low and a high value follow when the hand rests.</source>
        <translation>Ein niedriger und ein hoher Wert folgen, wenn die Hand ruht.</translation>
    </message>
    <message>
        <source>Between %1 and %2 cm² right there if the assumptions are a little off; real hair can differ more.</source>
        <translation>Zwischen %1 und %2 cm² genau dort, wenn die Annahmen etwas danebenliegen; echtes Haar kann stärker abweichen.</translation>
    </message>
    <message>
        <source>It depends most on %1.</source>
        <translation>Es hängt am meisten ab von: %1.</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>Piece %1: </source>
        <translation>Strähne %1: </translation>
    </message>
    <message>
        <source>Pieces %1: </source>
        <translation>Strähnen %1: </translation>
    </message>
    <message>
        <source>What needs a look, opened</source>
        <translation>Was einen Blick braucht, geöffnet</translation>
    </message>
    <message>
        <source>Picture of where it is</source>
        <translation>Bild der Stelle</translation>
    </message>
    <message>
        <source>Show it</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Wear the hair the way that shows it: %1</source>
        <translation>Das Haar so tragen, dass es sich zeigt: %1</translation>
    </message>
    <message>
        <source>Change this limit…</source>
        <translation>Diese Grenze ändern…</translation>
    </message>
    <message>
        <source>Opens the assumption that says where this begins to need a look</source>
        <translation>Öffnet die Annahme, die sagt, ab wo dies einen Blick braucht</translation>
    </message>
    <message>
        <source>Trying: %1</source>
        <translation>Im Versuch: %1</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Make it part of the plan; undo takes it back</source>
        <translation>In den Plan übernehmen; Rückgängig nimmt es zurück</translation>
    </message>
    <message>
        <source>Drop it</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>The plan stays as it was</source>
        <translation>Der Plan bleibt, wie er war</translation>
    </message>
    <message>
        <source>Changes of placement are being tried …</source>
        <translation>Änderungen der Platzierung werden versucht …</translation>
    </message>
    <message>
        <source>None of the changes of placement that were tried helps; your own eye may find one.</source>
        <translation>Keine der versuchten Änderungen der Platzierung hilft; Ihr eigenes Auge findet vielleicht eine.</translation>
    </message>
    <message>
        <source>What a change of placement might do; try it, then keep or drop it. Placement only: the maker&apos;s directions, your licence, the hair and the scalp come first; test a strand.</source>
        <translation>Was eine Änderung der Platzierung bewirken könnte; versuchen, dann behalten oder verwerfen. Nur die Platzierung: Die Angaben des Herstellers, Ihre Berufsberechtigung, das Haar und die Kopfhaut gehen vor; an einer Probesträhne testen.</translation>
    </message>
    <message>
        <source>Try</source>
        <translation>Versuchen</translation>
    </message>
    <message>
        <source>Try: %1</source>
        <translation>Versuchen: %1</translation>
    </message>
    <message>
        <source>Shows the plan with this change; nothing is changed until you keep it</source>
        <translation>Zeigt den Plan mit dieser Änderung; nichts wird geändert, bis Sie es behalten</translation>
    </message>
    <message>
        <source>Not listed any more; look at the other readings below.</source>
        <translation>Steht nicht mehr in der Liste; die übrigen Werte unten ansehen.</translation>
    </message>
    <message>
        <source>Still there: %1</source>
        <translation>Noch da: %1</translation>
    </message>
    <message>
        <source>New things that need a look: %1.</source>
        <translation>Neues, das einen Blick braucht: %1.</translation>
    </message>
    <message>
        <source>The openings are being worked out …</source>
        <translation>Die Öffnungen werden berechnet …</translation>
    </message>
    <message>
        <source>%1: level %2 to %3, %4 % to %5 % light</source>
        <translation>%1: Tonhöhe %2 zu %3, %4 % zu %5 % hell</translation>
    </message>
    <message>
        <source>whole head</source>
        <translation>ganzer Kopf</translation>
    </message>
    <message>
        <source>No region&apos;s reading changes by more than can be seen.</source>
        <translation>Der Wert keiner Partie ändert sich sichtbar.</translation>
    </message>
    <message>
        <source>and %1 more regions, by less</source>
        <translation>und %1 weitere Partien, um weniger</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::FindingsCard</name>
    <message>
        <source>over 26</source>
        <translation>über 26</translation>
    </message>
    <message>
        <source>Within 26 weeks the drawing shows no regrowth tied back, which is no sign that none will show</source>
        <translation>Zurückgebunden zeigt die Zeichnung innerhalb von 26 Wochen keinen Nachwuchs; das heißt nicht, dass keiner zu sehen sein wird</translation>
    </message>
    <message>
        <source>Within 26 weeks the drawing shows no regrowth worn down, which is no sign that none will show</source>
        <translation>Offen getragen zeigt die Zeichnung innerhalb von 26 Wochen keinen Nachwuchs; das heißt nicht, dass keiner zu sehen sein wird</translation>
    </message>
    <message>
        <source>Regrowth shows tied back after about %1 weeks (%2 to %3)</source>
        <translation>Zurückgebunden zeigt sich Nachwuchs nach etwa %1 Wochen (%2 bis %3)</translation>
    </message>
    <message>
        <source>Regrowth shows worn down after about %1 weeks (%2 to %3)</source>
        <translation>Offen getragen zeigt sich Nachwuchs nach etwa %1 Wochen (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1 (%2 mm)</source>
        <translation>%1 (%2 mm)</translation>
    </message>
    <message>
        <source>Ribbons are seen in the salon mirror at: %1</source>
        <translation>Im Salonspiegel sind Bänder zu sehen: %1</translation>
    </message>
    <message>
        <source>Needs a look</source>
        <translation>Bitte ansehen</translation>
    </message>
    <message>
        <source>Blocks where the hair opens</source>
        <translation>Blöcke, wo das Haar sich öffnet</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::FindingsList</name>
    <message>
        <source>Needs a look</source>
        <translation>Bitte ansehen</translation>
    </message>
    <message>
        <source>What needs a look</source>
        <translation>Was einen Blick braucht</translation>
    </message>
    <message>
        <source>Wrong: %1, needs a look: %2</source>
        <translation>Falsch: %1, bitte ansehen: %2</translation>
    </message>
    <message>
        <source>Wrong: %1</source>
        <translation>Falsch: %1</translation>
    </message>
    <message>
        <source>Needs a look: %1</source>
        <translation>Bitte ansehen: %1</translation>
    </message>
    <message>
        <source>Nothing listed</source>
        <translation>Nichts aufgeführt</translation>
    </message>
    <message>
        <source>%1, of the plan before the last change</source>
        <translation>%1, vom Plan vor der letzten Änderung</translation>
    </message>
    <message>
        <source>%1 so far</source>
        <translation>bisher %1</translation>
    </message>
    <message>
        <source>Select what this is about</source>
        <translation>Wählen, worum es geht</translation>
    </message>
    <message>
        <source>The look</source>
        <translation>Der Look</translation>
    </message>
    <message>
        <source>Open this: where it is and what might be changed</source>
        <translation>Dies öffnen: wo es ist und was geändert werden könnte</translation>
    </message>
    <message>
        <source>Nothing is listed. What was looked for: in the drawing, pieces that start near the scalp or overlap, lightener over light or poor hair, backcombing of poor hair, and what was typed and does not fit together. This says nothing about this hair or this scalp: look at both, test, and read the maker&apos;s directions before work.</source>
        <translation>Nichts steht hier. Gesucht wurde: in der Zeichnung nach Strähnen, die nahe der Kopfhaut beginnen oder überlappen, nach Aufhellung über hellem oder angegriffenem Haar, nach Toupieren von angegriffenem Haar und nach Einträgen, die nicht zusammenpassen. Über dieses Haar und diese Kopfhaut sagt das nichts: beide ansehen, testen und vor der Arbeit die Angaben des Herstellers lesen.</translation>
    </message>
    <message>
        <source>The drawing is being checked</source>
        <translation>Die Zeichnung wird geprüft</translation>
    </message>
    <message>
        <source>Only the drawing was checked</source>
        <translation>Nur die Zeichnung wurde geprüft</translation>
    </message>
    <message>
        <source>Not checked: too little memory</source>
        <translation>Nicht geprüft: zu wenig Speicher</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::HintBar</name>
    <message>
        <source>Hint</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Got it</source>
        <translation>Verstanden</translation>
    </message>
    <message>
        <source>This hint does not come again</source>
        <translation>Dieser Hinweis kommt nicht wieder</translation>
    </message>
    <message>
        <source>No hints</source>
        <translation>Keine Hinweise</translation>
    </message>
    <message>
        <source>No hint comes again; Preferences can bring them back</source>
        <translation>Kein Hinweis kommt wieder; die Einstellungen können sie zurückholen</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::KeysPage</name>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Choose a command, then press the keys it should have. Keys that another command has are never taken without asking.</source>
        <translation>Einen Befehl wählen, dann die Tasten drücken, die er haben soll. Tasten eines anderen Befehls werden nie ungefragt genommen.</translation>
    </message>
    <message>
        <source>Show only commands with these words</source>
        <translation>Nur Befehle mit diesen Wörtern zeigen</translation>
    </message>
    <message>
        <source>Commands and their keys</source>
        <translation>Befehle und ihre Tasten</translation>
    </message>
    <message>
        <source>Command</source>
        <translation>Befehl</translation>
    </message>
    <message>
        <source>As delivered</source>
        <translation>Wie geliefert</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Was er tut</translation>
    </message>
    <message>
        <source>Press the new keys</source>
        <translation>Die neuen Tasten drücken</translation>
    </message>
    <message>
        <source>Press the keys, one after the other; a second&apos;s rest ends them</source>
        <translation>Die Tasten nacheinander drücken; eine Sekunde Ruhe beendet sie</translation>
    </message>
    <message>
        <source>Take them over</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>The other command loses these keys</source>
        <translation>Der andere Befehl verliert diese Tasten</translation>
    </message>
    <message>
        <source>No keys</source>
        <translation>Keine Tasten</translation>
    </message>
    <message>
        <source>The command stays in its menu and in the command search</source>
        <translation>Der Befehl bleibt in seinem Menü und in der Befehlssuche</translation>
    </message>
    <message>
        <source>Reset this one</source>
        <translation>Diesen zurücksetzen</translation>
    </message>
    <message>
        <source>The keys it came with</source>
        <translation>Die mitgelieferten Tasten</translation>
    </message>
    <message>
        <source>Reset all</source>
        <translation>Alle zurücksetzen</translation>
    </message>
    <message>
        <source>Every command gets the keys it came with</source>
        <translation>Jeder Befehl bekommt seine mitgelieferten Tasten</translation>
    </message>
    <message>
        <source>No command has “%1” in its name, its tip or its keys.</source>
        <translation>Kein Befehl hat „%1“ im Namen, im Hinweis oder in seinen Tasten.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Keys for “%1”</source>
        <translation>Tasten für „%1“</translation>
    </message>
    <message>
        <source>%1 belongs to “%2”. Press other keys, or take them over; “%2” then has none.</source>
        <translation>%1 gehört zu „%2“. Andere Tasten drücken oder sie übernehmen; „%2“ hat dann keine.</translation>
    </message>
    <message>
        <source>%1 gets in the way of %2, which belongs to “%3”. Press other keys, or take them over; “%3” then has none.</source>
        <translation>%1 kommt %2 in die Quere, das zu „%3“ gehört. Andere Tasten drücken oder sie übernehmen; „%3“ hat dann keine.</translation>
    </message>
    <message>
        <source>“%1” has no keys now.</source>
        <translation>„%1“ hat jetzt keine Tasten.</translation>
    </message>
    <message>
        <source>“%1” now has %2.</source>
        <translation>„%1“ hat jetzt %2.</translation>
    </message>
    <message>
        <source>Every command has the keys it came with.</source>
        <translation>Jeder Befehl hat seine mitgelieferten Tasten.</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::LeftComparePage</name>
    <message>
        <source>What differs in the recovered plan</source>
        <translation>Was im wiederhergestellten Plan anders ist</translation>
    </message>
    <message>
        <source>Open recovered</source>
        <translation>Wiederhergestellten öffnen</translation>
    </message>
    <message>
        <source>Open the saved one</source>
        <translation>Gespeicherten öffnen</translation>
    </message>
    <message>
        <source>The recovered plan stays and is offered again</source>
        <translation>Der wiederhergestellte Plan bleibt und wird wieder angeboten</translation>
    </message>
    <message>
        <source>Drawing: %1</source>
        <translation>Zeichnung: %1</translation>
    </message>
    <message>
        <source>Nothing that is drawn or typed differs.</source>
        <translation>Nichts Gezeichnetes oder Eingetragenes ist anders.</translation>
    </message>
    <message>
        <source>Compare: unsaved work beside the file</source>
        <translation>Vergleich: nicht Gespeichertes neben der Datei</translation>
    </message>
    <message>
        <source>Nothing is decided yet. Your unsaved work waits until you open or discard it.</source>
        <translation>Noch ist nichts entschieden. Ihre nicht gespeicherte Arbeit wartet, bis Sie sie öffnen oder verwerfen.</translation>
    </message>
    <message>
        <source>Unsaved work, %1, changed %2</source>
        <translation>Nicht gespeichert, %1, geändert %2</translation>
    </message>
    <message>
        <source>In the file %1</source>
        <translation>In der Datei %1</translation>
    </message>
    <message>
        <source>In the file %1, saved %2</source>
        <translation>In der Datei %1, gespeichert %2</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::LeftPlansBox</name>
    <message>
        <source>Untitled plan</source>
        <translation>Plan ohne Titel</translation>
    </message>
    <message>
        <source>No saved file is known for it.</source>
        <translation>Es ist keine gespeicherte Datei dazu bekannt.</translation>
    </message>
    <message>
        <source>Its file %1 has not changed since.</source>
        <translation>Die Datei %1 hat sich seitdem nicht geändert.</translation>
    </message>
    <message>
        <source>Its file %1 was changed after that.</source>
        <translation>Die Datei %1 wurde danach geändert.</translation>
    </message>
    <message>
        <source>Its file %1 is not there any more.</source>
        <translation>Die Datei %1 ist nicht mehr da.</translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation>Ungespeicherte Arbeit</translation>
    </message>
    <message>
        <source>There is no picture: the program ended while it read or drew this plan.</source>
        <translation>Es gibt kein Bild: Das Programm endete, während es diesen Plan las oder zeichnete.</translation>
    </message>
    <message>
        <source>This copy is damaged and cannot be opened. It is kept as it is. (%1)</source>
        <translation>Diese Kopie ist beschädigt und lässt sich nicht öffnen. Sie bleibt, wie sie ist. (%1)</translation>
    </message>
    <message>
        <source>It was opened once, and the program ended soon after.</source>
        <translation>Sie wurde einmal geöffnet, und das Programm endete bald darauf.</translation>
    </message>
    <message>
        <source>It was opened %1 times, and the program ended soon after each time.</source>
        <translation>Sie wurde %1-mal geöffnet, und das Programm endete jedes Mal bald darauf.</translation>
    </message>
    <message>
        <source>Drawing of %1: from behind, from the client&apos;s left, from above</source>
        <translation>Zeichnung von %1: von hinten, von der linken Kopfseite, von oben</translation>
    </message>
    <message>
        <source>No picture</source>
        <translation>Kein Bild</translation>
    </message>
    <message>
        <source>Changed %1. %2</source>
        <translation>Geändert %1. %2</translation>
    </message>
    <message>
        <source>Save a copy of the file…</source>
        <translation>Kopie der Datei speichern…</translation>
    </message>
    <message>
        <source>A copy of the file as it is, for somebody who can look into it</source>
        <translation>Eine Kopie der Datei, wie sie ist, für jemanden, der hineinsehen kann</translation>
    </message>
    <message>
        <source>Open without the look</source>
        <translation>Ohne Look öffnen</translation>
    </message>
    <message>
        <source>Shows the diagram; the look is worked out when you ask for it</source>
        <translation>Zeigt das Diagramm; der Look wird berechnet, wenn Sie es verlangen</translation>
    </message>
    <message>
        <source>Open recovered</source>
        <translation>Wiederhergestellten öffnen</translation>
    </message>
    <message>
        <source>Opens it as it was, not yet saved in its file</source>
        <translation>Öffnet sie, wie sie war, noch nicht in ihrer Datei gespeichert</translation>
    </message>
    <message>
        <source>Compare with the saved one</source>
        <translation>Mit dem Gespeicherten vergleichen</translation>
    </message>
    <message>
        <source>Both pictures side by side and what differs</source>
        <translation>Beide Bilder nebeneinander und was anders ist</translation>
    </message>
    <message>
        <source>Keep for later</source>
        <translation>Für später behalten</translation>
    </message>
    <message>
        <source>It stays and is offered again</source>
        <translation>Sie bleibt und wird wieder angeboten</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Takes it off this list; you can put it back until this window is closed</source>
        <translation>Nimmt sie von dieser Liste; sie lässt sich zurücklegen, bis dieses Fenster geschlossen wird</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::MainWindow</name>
    <message>
        <source>The look cannot be worked out: %1</source>
        <translation>Der Look lässt sich nicht berechnen: %1</translation>
    </message>
    <message>
        <source>Save the changes before opening the example?</source>
        <translation>Die Änderungen speichern, bevor das Beispiel geöffnet wird?</translation>
    </message>
    <message>
        <source>Save them before the new plan begins?</source>
        <translation>Sie speichern, bevor der neue Plan beginnt?</translation>
    </message>
    <message>
        <source>Open or begin a plan first</source>
        <translation>Zuerst einen Plan öffnen oder beginnen</translation>
    </message>
    <message>
        <source>%1[*] (read only) — Combdraft</source>
        <translation>%1[*] (nur lesen) — Combdraft</translation>
    </message>
    <message>
        <source>%1[*] — Combdraft</source>
        <translation>%1[*] — Combdraft</translation>
    </message>
    <message>
        <source>Save the changes before closing?</source>
        <translation>Die Änderungen vor dem Schließen speichern?</translation>
    </message>
    <message>
        <source>Only plan files on this computer can be dropped here.</source>
        <translation>Hier lassen sich nur Plandateien dieses Rechners ablegen.</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>Take the last change back</source>
        <translation>Die letzte Änderung zurücknehmen</translation>
    </message>
    <message>
        <source>Nothing has been changed yet</source>
        <translation>Es wurde noch nichts geändert</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>Make the change again</source>
        <translation>Die Änderung noch einmal machen</translation>
    </message>
    <message>
        <source>Nothing has been taken back</source>
        <translation>Es wurde nichts zurückgenommen</translation>
    </message>
    <message>
        <source>&amp;Find a command…</source>
        <translation>Befehl &amp;finden…</translation>
    </message>
    <message>
        <source>Type a word of what you want to do; it shows the key and runs the command</source>
        <translation>Ein Wort eingeben von dem, was Sie tun möchten; zeigt die Taste und führt den Befehl aus</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Finden</translation>
    </message>
    <message>
        <source>Select &amp;all pieces</source>
        <translation>Alle &amp;Strähnen wählen</translation>
    </message>
    <message>
        <source>Select every piece of this choice</source>
        <translation>Jede Strähne dieser Variante wählen</translation>
    </message>
    <message>
        <source>&amp;Add a piece</source>
        <translation>Strähne hin&amp;zufügen</translation>
    </message>
    <message>
        <source>A new piece below the selected one, or across the back; drag it where it belongs</source>
        <translation>Eine neue Strähne unter der gewählten oder quer über den Hinterkopf; an ihren Platz ziehen</translation>
    </message>
    <message>
        <source>Add piece</source>
        <translation>Neue Strähne</translation>
    </message>
    <message>
        <source>Same on the &amp;other side</source>
        <translation>&amp;Gleich auf der anderen Seite</translation>
    </message>
    <message>
        <source>A twin across the centre line that follows every change</source>
        <translation>Ein Zwilling jenseits der Mittellinie, der jeder Änderung folgt</translation>
    </message>
    <message>
        <source>Nothing was added: what is selected lies on the centre line and is its own mirror, or has its other side already.</source>
        <translation>Nichts kam hinzu: Das Gewählte liegt auf der Mittellinie und ist sein eigenes Spiegelbild, oder die andere Seite ist schon da.</translation>
    </message>
    <message>
        <source>Same on the other side</source>
        <translation>Gleich auf der anderen Seite</translation>
    </message>
    <message>
        <source>Other side</source>
        <translation>Andere Seite</translation>
    </message>
    <message>
        <source>On its o&amp;wn</source>
        <translation>Eigen&amp;ständig</translation>
    </message>
    <message>
        <source>A twin keeps its place and stops following</source>
        <translation>Ein Zwilling behält seinen Platz und folgt nicht mehr</translation>
    </message>
    <message>
        <source>On its own</source>
        <translation>Eigenständig</translation>
    </message>
    <message>
        <source>Select a twin first: a piece made with Same on the other side</source>
        <translation>Zuerst einen Zwilling wählen: eine Strähne, die mit „Gleich auf der anderen Seite“ entstand</translation>
    </message>
    <message>
        <source>&amp;Follow the section</source>
        <translation>Der &amp;Abteilung folgen</translation>
    </message>
    <message>
        <source>What was edited by hand on laid-out pieces follows the section&apos;s rule again; emptied places are filled</source>
        <translation>Was an ausgelegten Strähnen von Hand geändert wurde, folgt wieder der Regel der Abteilung; geleerte Plätze werden gefüllt</translation>
    </message>
    <message>
        <source>Follow the section</source>
        <translation>Der Abteilung folgen</translation>
    </message>
    <message>
        <source>&amp;Let go of the section</source>
        <translation>Von der Abteilung &amp;lösen</translation>
    </message>
    <message>
        <source>Laid-out pieces keep all they have, whatever the section&apos;s rule says</source>
        <translation>Ausgelegte Strähnen behalten alles, was sie haben, gleich was die Regel der Abteilung sagt</translation>
    </message>
    <message>
        <source>Let go of the section</source>
        <translation>Von der Abteilung lösen</translation>
    </message>
    <message>
        <source>&amp;Number by rule</source>
        <translation>Nach &amp;Regel nummerieren</translation>
    </message>
    <message>
        <source>Working order: section by section, in each from the bottom to the top</source>
        <translation>Reihenfolge der Arbeit: Abteilung für Abteilung, in jeder von unten nach oben</translation>
    </message>
    <message>
        <source>Number by rule</source>
        <translation>Nach Regel nummerieren</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>Take what is selected off the plan; undo brings it back</source>
        <translation>Das Gewählte aus dem Plan nehmen; Rückgängig bringt es wieder</translation>
    </message>
    <message>
        <source>&amp;Select</source>
        <translation>Aus&amp;wählen</translation>
    </message>
    <message>
        <source>Pick pieces and drag them, their thickness and their start</source>
        <translation>Strähnen wählen und sie ziehen, ihre Dicke und ihren Beginn</translation>
    </message>
    <message>
        <source>S&amp;ection</source>
        <translation>A&amp;bteilung</translation>
    </message>
    <message>
        <source>Draw an area of scalp corner by corner; it catches on hairline, ridge and other lines</source>
        <translation>Eine Fläche der Kopfhaut Ecke für Ecke zeichnen; rastet an Haarlinie, Hutlinie und anderen Linien ein</translation>
    </message>
    <message>
        <source>Par&amp;ting</source>
        <translation>Ab&amp;teillinie</translation>
    </message>
    <message>
        <source>Draw a line across a section: it becomes two</source>
        <translation>Eine Linie quer über eine Abteilung zeichnen: Aus ihr werden zwei</translation>
    </message>
    <message>
        <source>&amp;Lay out</source>
        <translation>Aus&amp;legen</translation>
    </message>
    <message>
        <source>Click into a section to fill it with pieces and left-outs by a rule</source>
        <translation>In eine Abteilung klicken, um sie nach einer Regel mit Strähnen und Auslassungen zu füllen</translation>
    </message>
    <message>
        <source>Draw a &amp;piece</source>
        <translation>&amp;Strähne zeichnen</translation>
    </message>
    <message>
        <source>Draw a new piece along the head, point by point</source>
        <translation>Eine neue Strähne entlang des Kopfs zeichnen, Punkt für Punkt</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Strähne</translation>
    </message>
    <message>
        <source>Left-&amp;out</source>
        <translation>A&amp;uslassung</translation>
    </message>
    <message>
        <source>Draw hair that stays as it is; it keeps its hair against every piece</source>
        <translation>Haar zeichnen, das bleibt, wie es ist; es behält sein Haar gegenüber jeder Strähne</translation>
    </message>
    <message>
        <source>&amp;Drop-out</source>
        <translation>Aussparun&amp;g</translation>
    </message>
    <message>
        <source>Draw along a piece which stretch of it stays dark</source>
        <translation>Entlang einer Strähne zeichnen, welches Stück dunkel bleibt</translation>
    </message>
    <message>
        <source>&amp;Number</source>
        <translation>&amp;Nummerieren</translation>
    </message>
    <message>
        <source>Tap the pieces in working order</source>
        <translation>Die Strähnen in der Reihenfolge der Arbeit antippen</translation>
    </message>
    <message>
        <source>P&amp;art</source>
        <translation>S&amp;cheitel</translation>
    </message>
    <message>
        <source>Draw how the hair is usually parted</source>
        <translation>Zeichnen, wie das Haar gewöhnlich gescheitelt ist</translation>
    </message>
    <message>
        <source>S&amp;wirl</source>
        <translation>W&amp;irbel</translation>
    </message>
    <message>
        <source>Set where the hair swirls at the crown</source>
        <translation>Setzen, wo das Haar am Oberkopf wirbelt</translation>
    </message>
    <message>
        <source>Note (&amp;K)</source>
        <translation>Noti&amp;z</translation>
    </message>
    <message>
        <source>Write a note at a place on the head</source>
        <translation>Eine Notiz an eine Stelle des Kopfs schreiben</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>&amp;Measure</source>
        <translation>&amp;Messen</translation>
    </message>
    <message>
        <source>Measure a way along the head</source>
        <translation>Einen Weg entlang des Kopfs messen</translation>
    </message>
    <message>
        <source>&amp;Diagram</source>
        <translation>&amp;Diagramm</translation>
    </message>
    <message>
        <source>Show the placement only</source>
        <translation>Nur die Platzierung zeigen</translation>
    </message>
    <message>
        <source>&amp;Both</source>
        <translation>&amp;Beides</translation>
    </message>
    <message>
        <source>Diagram beside look; pull the divider across the views</source>
        <translation>Diagramm neben Look; den Teiler über die Ansichten ziehen</translation>
    </message>
    <message>
        <source>&amp;Look</source>
        <translation>&amp;Look</translation>
    </message>
    <message>
        <source>Show the predicted hair only</source>
        <translation>Nur das vorhergesagte Haar zeigen</translation>
    </message>
    <message>
        <source>Gre&amp;y surround</source>
        <translation>Gra&amp;ues Umfeld</translation>
    </message>
    <message>
        <source>A neutral mid grey round the look, as for judging colour</source>
        <translation>Ein neutrales mittleres Grau um den Look, wie zum Beurteilen von Farbe</translation>
    </message>
    <message>
        <source>Open a plan in a light window; a dark one always has it</source>
        <translation>Einen Plan in einem hellen Fenster öffnen; ein dunkles hat es immer</translation>
    </message>
    <message>
        <source>Grey</source>
        <translation>Grau</translation>
    </message>
    <message>
        <source>Dar&amp;k window</source>
        <translation>Dunkles &amp;Fenster</translation>
    </message>
    <message>
        <source>Dark colours for the salon floor; hair stands on mid grey</source>
        <translation>Dunkle Farben für den Salon; Haar steht auf mittlerem Grau</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Vorn</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Hinterkopf</translation>
    </message>
    <message>
        <source>Client&apos;s left</source>
        <translation>Linke Kopfseite</translation>
    </message>
    <message>
        <source>Client&apos;s right</source>
        <translation>Rechte Kopfseite</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Oberkopf</translation>
    </message>
    <message>
        <source>Crown close-up</source>
        <translation>Wirbelpartie, nah</translation>
    </message>
    <message>
        <source>Make this view the large one</source>
        <translation>Diese Ansicht zur großen machen</translation>
    </message>
    <message>
        <source>All at one size</source>
        <translation>Alle gleich groß</translation>
    </message>
    <message>
        <source>All six views side by side</source>
        <translation>Alle sechs Ansichten nebeneinander</translation>
    </message>
    <message>
        <source>&amp;Piece card</source>
        <translation>&amp;Strähnenkarte</translation>
    </message>
    <message>
        <source>Everything about the selected pieces</source>
        <translation>Alles über die gewählten Strähnen</translation>
    </message>
    <message>
        <source>&amp;Section card</source>
        <translation>Ab&amp;teilungskarte</translation>
    </message>
    <message>
        <source>The selected section and the rule that lays it out</source>
        <translation>Die gewählte Abteilung und die Regel, die sie auslegt</translation>
    </message>
    <message>
        <source>&amp;Head card</source>
        <translation>&amp;Kopfkarte</translation>
    </message>
    <message>
        <source>Measures, part and swirls</source>
        <translation>Maße, Scheitel und Wirbel</translation>
    </message>
    <message>
        <source>Ha&amp;ir card</source>
        <translation>&amp;Haarkarte</translation>
    </message>
    <message>
        <source>How much, how long, which level</source>
        <translation>Wie viel, wie lang, welche Tonhöhe</translation>
    </message>
    <message>
        <source>&amp;Formula card</source>
        <translation>Re&amp;zepturkarte</translation>
    </message>
    <message>
        <source>Mixtures as typed from their leaflets</source>
        <translation>Mischungen, wie aus ihren Gebrauchsanweisungen eingetragen</translation>
    </message>
    <message>
        <source>What was chan&amp;ged</source>
        <translation>Was geä&amp;ndert wurde</translation>
    </message>
    <message>
        <source>Every change by name; choose one to go back to it</source>
        <translation>Jede Änderung mit Namen; eine wählen, um zu ihr zurückzugehen</translation>
    </message>
    <message>
        <source>&amp;Plan</source>
        <translation>&amp;Plan</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Tools</source>
        <translation>&amp;Werkzeuge</translation>
    </message>
    <message>
        <source>P&amp;iece</source>
        <translation>&amp;Strähne</translation>
    </message>
    <message>
        <source>&amp;Choice</source>
        <translation>Va&amp;riante</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>Large &amp;view</source>
        <translation>&amp;Große Ansicht</translation>
    </message>
    <message>
        <source>Menus</source>
        <translation>Menüs</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Werkzeuge</translation>
    </message>
    <message>
        <source>Drawing</source>
        <translation>Zeichnen</translation>
    </message>
    <message>
        <source>Drawing tools</source>
        <translation>Zeichenwerkzeuge</translation>
    </message>
    <message>
        <source>Add a piece</source>
        <translation>Eine Strähne hinzufügen</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>Make a second choice first</source>
        <translation>Zuerst eine zweite Variante anlegen</translation>
    </message>
    <message>
        <source>A plan holds at most 26 choices</source>
        <translation>Ein Plan fasst höchstens 26 Varianten</translation>
    </message>
    <message>
        <source>Choices and ai&amp;ms</source>
        <translation>&amp;Varianten und Ziele</translation>
    </message>
    <message>
        <source>The alternative placements of this plan, and what is wanted of the look</source>
        <translation>Die möglichen Platzierungen dieses Plans und was vom Look gewünscht ist</translation>
    </message>
    <message>
        <source>Choice</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>Copy as a &amp;new choice</source>
        <translation>Als &amp;neue Variante kopieren</translation>
    </message>
    <message>
        <source>A new choice that begins with all of this one; work on goes there</source>
        <translation>Eine neue Variante, die mit allem aus dieser beginnt; dort geht die Arbeit weiter</translation>
    </message>
    <message>
        <source>New choice, &amp;empty</source>
        <translation>Neue Variante, &amp;leer</translation>
    </message>
    <message>
        <source>A new choice without pieces, for the same head and hair</source>
        <translation>Eine neue Variante ohne Strähnen, für denselben Kopf und dasselbe Haar</translation>
    </message>
    <message>
        <source>&amp;Rename this choice</source>
        <translation>Diese Variante &amp;umbenennen</translation>
    </message>
    <message>
        <source>Give the choice that is worked on another name</source>
        <translation>Der Variante, an der gearbeitet wird, einen anderen Namen geben</translation>
    </message>
    <message>
        <source>Remo&amp;ve this choice</source>
        <translation>Diese Variante ent&amp;fernen</translation>
    </message>
    <message>
        <source>Take this choice and all its pieces off the plan; undo brings them back</source>
        <translation>Diese Variante mit allen Strähnen aus dem Plan nehmen; Rückgängig bringt sie wieder</translation>
    </message>
    <message>
        <source>Ne&amp;xt choice</source>
        <translation>Näch&amp;ste Variante</translation>
    </message>
    <message>
        <source>Work on the next choice; after the last comes the first</source>
        <translation>An der nächsten Variante arbeiten; nach der letzten kommt die erste</translation>
    </message>
    <message>
        <source>&amp;Take what is selected into another choice</source>
        <translation>Auswahl in eine &amp;andere Variante übernehmen</translation>
    </message>
    <message>
        <source>Copies selected pieces, sections and notes to the same places in another choice; with several, choose which</source>
        <translation>Kopiert gewählte Strähnen, Abteilungen und Notizen an dieselben Stellen einer anderen Variante; bei mehreren wählen, in welche</translation>
    </message>
    <message>
        <source>Make a second choice, then select pieces, sections or notes</source>
        <translation>Eine zweite Variante anlegen, dann Strähnen, Abteilungen oder Notizen wählen</translation>
    </message>
    <message>
        <source>C&amp;ompare side by side</source>
        <translation>Nebeneinander ver&amp;gleichen</translation>
    </message>
    <message>
        <source>Two choices, or today and a choice: the same view and the readings of both</source>
        <translation>Zwei Varianten, oder heute und eine Variante: dieselbe Ansicht und die Werte beider</translation>
    </message>
    <message>
        <source>Set an &amp;aim…</source>
        <translation>Ein &amp;Ziel setzen…</translation>
    </message>
    <message>
        <source>Say which level and contrast is wanted in a region; it stands beside the reading</source>
        <translation>Sagen, welche Tonhöhe und welcher Kontrast in einer Partie gewünscht ist; es steht neben dem Wert</translation>
    </message>
    <message>
        <source>Su&amp;ggest a placement…</source>
        <translation>Platzierung vors&amp;chlagen…</translation>
    </message>
    <message>
        <source>Searches how the pieces might come nearer to the aims; you try, keep or drop what it finds</source>
        <translation>Sucht, wie die Strähnen den Zielen näher kommen könnten; was sich findet, lässt sich versuchen, behalten oder verwerfen</translation>
    </message>
    <message>
        <source>Draw or lay out pieces first</source>
        <translation>Zuerst Strähnen zeichnen oder auslegen</translation>
    </message>
    <message>
        <source>Suggest</source>
        <translation>Vorschlagen</translation>
    </message>
    <message>
        <source>Select a piece, a section or a note first</source>
        <translation>Zuerst eine Strähne, eine Abteilung oder eine Notiz wählen</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>Selected sections with their pieces, pieces and notes; other programs get a picture of the large view</source>
        <translation>Gewählte Abteilungen mit ihren Strähnen, Strähnen und Notizen; andere Programme bekommen ein Bild der großen Ansicht</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>&amp;Ausschneiden</translation>
    </message>
    <message>
        <source>Copy what is selected and take it off the plan</source>
        <translation>Das Gewählte kopieren und aus dem Plan nehmen</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>&amp;Einfügen</translation>
    </message>
    <message>
        <source>Put in what was copied, in this plan, another one or another window</source>
        <translation>Einsetzen, was kopiert wurde, in diesem Plan, einem anderen oder einem anderen Fenster</translation>
    </message>
    <message>
        <source>&amp;Duplicate</source>
        <translation>&amp;Duplizieren</translation>
    </message>
    <message>
        <source>A copy a little lower; sections of one side come to the same place on the other</source>
        <translation>Eine Kopie etwas tiefer; Abteilungen einer Seite kommen an dieselbe Stelle der anderen</translation>
    </message>
    <message>
        <source>Save as p&amp;icture…</source>
        <translation>Als B&amp;ild speichern…</translation>
    </message>
    <message>
        <source>All six views with the key as PDF page, SVG drawing or PNG picture; drag a view out by its title for one</source>
        <translation>Alle sechs Ansichten mit Legende als PDF-Seite, SVG-Zeichnung oder PNG-Bild; eine Ansicht am Titel herausziehen für nur eine</translation>
    </message>
    <message>
        <source>Select same ki&amp;nd</source>
        <translation>Gleiche Ar&amp;t wählen</translation>
    </message>
    <message>
        <source>All that do the same and are taken the same way</source>
        <translation>Alle, die dasselbe tun und gleich genommen werden</translation>
    </message>
    <message>
        <source>Select same s&amp;ection</source>
        <translation>Gleiche A&amp;bteilung wählen</translation>
    </message>
    <message>
        <source>All pieces of the same section</source>
        <translation>Alle Strähnen derselben Abteilung</translation>
    </message>
    <message>
        <source>Select all on this s&amp;ide</source>
        <translation>Alle auf dieser Se&amp;ite wählen</translation>
    </message>
    <message>
        <source>All pieces on this side of the centre line</source>
        <translation>Alle Strähnen auf dieser Seite der Mittellinie</translation>
    </message>
    <message>
        <source>Copied: %1.</source>
        <translation>Kopiert: %1.</translation>
    </message>
    <message>
        <source>Save the sheet as a picture</source>
        <translation>Das Kopfblatt als Bild speichern</translation>
    </message>
    <message>
        <source>PDF page (*.pdf);;Drawing (*.svg);;Picture (*.png)</source>
        <translation>PDF-Seite (*.pdf);;Zeichnung (*.svg);;Bild (*.png)</translation>
    </message>
    <message>
        <source>All six views stand in %1.</source>
        <translation>Alle sechs Ansichten stehen in %1.</translation>
    </message>
    <message>
        <source>Cut %1</source>
        <translation>%1 ausschneiden</translation>
    </message>
    <message>
        <source>Nothing to paste: the clipboard holds no sections, pieces or notes of a plan.</source>
        <translation>Nichts einzufügen: In der Zwischenablage sind keine Abteilungen, Strähnen oder Notizen eines Plans.</translation>
    </message>
    <message>
        <source>What is on the clipboard cannot be pasted. %1</source>
        <translation>Was in der Zwischenablage ist, lässt sich nicht einfügen. %1</translation>
    </message>
    <message>
        <source>Paste %1</source>
        <translation>%1 einfügen</translation>
    </message>
    <message>
        <source>Duplicate %1</source>
        <translation>%1 duplizieren</translation>
    </message>
    <message>
        <source>Plans (*.json);;All files (*)</source>
        <translation>Pläne (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Start &amp;page</source>
        <translation>S&amp;tartseite</translation>
    </message>
    <message>
        <source>Recent plans, examples and unsaved work</source>
        <translation>Letzte Pläne, Beispiele und ungespeicherte Arbeit</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>&amp;New plan</source>
        <translation>&amp;Neuer Plan</translation>
    </message>
    <message>
        <source>Eight touches to the first look of a new head</source>
        <translation>Mit acht Griffen zum ersten Look eines neuen Kopfs</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neu</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Open a plan file</source>
        <translation>Eine Plandatei öffnen</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>Save the plan; the version before is kept beside it</source>
        <translation>Den Plan speichern; die Fassung davor bleibt daneben</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <source>&amp;Back to the plan</source>
        <translation>&amp;Zurück zum Plan</translation>
    </message>
    <message>
        <source>Go on with the plan that is open</source>
        <translation>Mit dem offenen Plan weitermachen</translation>
    </message>
    <message>
        <source>The plan is in front already, or none is open</source>
        <translation>Der Plan ist schon vorn, oder keiner ist offen</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>Close every window; each asks when its plan is not saved</source>
        <translation>Jedes Fenster schließen; jedes fragt, wenn sein Plan nicht gespeichert ist</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Stay</source>
        <translation>Bleiben</translation>
    </message>
    <message>
        <source>%1 was open here already; this window came forward.</source>
        <translation>%1 war hier schon offen; dieses Fenster kam nach vorn.</translation>
    </message>
    <message>
        <source>Save them before opening the other plan?</source>
        <translation>Sie speichern, bevor der andere Plan geöffnet wird?</translation>
    </message>
    <message>
        <source>%1 was written by an older program (format %2) and was read as format %3. Your next save writes the newer one; this file is then kept beside it as %1%4 until the save after that.</source>
        <translation>%1 wurde von einem älteren Programm geschrieben (Format %2) und als Format %3 gelesen. Beim nächsten Speichern wird das neuere geschrieben; diese Datei bleibt dann als %1%4 daneben, bis zum Speichern danach.</translation>
    </message>
    <message>
        <source>Open a plan</source>
        <translation>Einen Plan öffnen</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Speichern unter…</translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation>Ersetzen</translation>
    </message>
    <message>
        <source>Read it anew</source>
        <translation>Neu lesen</translation>
    </message>
    <message>
        <source>%1 is open elsewhere: %2. Saving would change it there.</source>
        <translation>%1 ist anderswo offen: %2. Speichern würde es dort ändern.</translation>
    </message>
    <message>
        <source>Not saved: %1</source>
        <translation>Nicht gespeichert: %1</translation>
    </message>
    <message>
        <source>the plan would have %1 pieces; a plan file holds at most %2</source>
        <translation>der Plan hätte %1 Strähnen; eine Plandatei fasst höchstens %2</translation>
    </message>
    <message>
        <source>the plan would have %1 sections; a plan file holds at most %2</source>
        <translation>der Plan hätte %1 Abteilungen; eine Plandatei fasst höchstens %2</translation>
    </message>
    <message>
        <source>the plan would have %1 formulas; a plan file holds at most %2</source>
        <translation>der Plan hätte %1 Rezepturen; eine Plandatei fasst höchstens %2</translation>
    </message>
    <message>
        <source>the plan would have %1 root shadows and glazes; a plan file holds at most %2</source>
        <translation>der Plan hätte %1 Ansatzschatten und Glanztönungen; eine Plandatei fasst höchstens %2</translation>
    </message>
    <message>
        <source>the plan would have %1 notes; a plan file holds at most %2</source>
        <translation>der Plan hätte %1 Notizen; eine Plandatei fasst höchstens %2</translation>
    </message>
    <message>
        <source>the plan would have %1 choices; a plan file holds at most %2</source>
        <translation>der Plan hätte %1 Varianten; eine Plandatei fasst höchstens %2</translation>
    </message>
    <message>
        <source>the plan would have %1 points in all; a plan file holds at most %2</source>
        <translation>der Plan hätte insgesamt %1 Punkte; eine Plandatei fasst höchstens %2</translation>
    </message>
    <message>
        <source>a line would have %1 points; a plan file holds at most %2</source>
        <translation>eine Linie hätte %1 Punkte; eine Plandatei fasst höchstens %2</translation>
    </message>
    <message>
        <source>an outline would have %1 points; a plan file holds at most %2</source>
        <translation>ein Umriss hätte %1 Punkte; eine Plandatei fasst höchstens %2</translation>
    </message>
    <message>
        <source>a text would be too long (%1); a plan file holds at most about %2 letters of it</source>
        <translation>ein Text wäre zu lang (%1); eine Plandatei fasst höchstens etwa %2 Zeichen davon</translation>
    </message>
    <message>
        <source>a name would be too long (%1); a plan file holds at most about %2 letters of it</source>
        <translation>ein Name wäre zu lang (%1); eine Plandatei fasst höchstens etwa %2 Zeichen davon</translation>
    </message>
    <message>
        <source>the plan would have %1 bytes; a plan file holds at most %2</source>
        <translation>der Plan hätte %1 Bytes; eine Plandatei fasst höchstens %2</translation>
    </message>
    <message>
        <source>the plan would be too large for one file (%1 of %2 values); remove something, or go on in a second plan</source>
        <translation>der Plan wäre zu groß für eine Datei (%1 von %2 Werten); etwas entfernen oder in einem zweiten Plan weitermachen</translation>
    </message>
    <message>
        <source>in another window of this program</source>
        <translation>in einem anderen Fenster dieses Programms</translation>
    </message>
    <message>
        <source>somewhere else (it is not known where)</source>
        <translation>anderswo (wo, ist nicht bekannt)</translation>
    </message>
    <message>
        <source>another program</source>
        <translation>ein anderes Programm</translation>
    </message>
    <message>
        <source>Chan&amp;ge it anyway</source>
        <translation>Trotzde&amp;m ändern</translation>
    </message>
    <message>
        <source>Only for a plan that may only be read</source>
        <translation>Nur bei einem Plan, der nur gelesen werden darf</translation>
    </message>
    <message>
        <source>Work on a &amp;copy</source>
        <translation>An einer &amp;Kopie arbeiten</translation>
    </message>
    <message>
        <source>Reports of &amp;faults…</source>
        <translation>Fehlerbe&amp;richte…</translation>
    </message>
    <message>
        <source>What the program wrote down when it ended itself; nothing is ever sent</source>
        <translation>Was das Programm aufschrieb, als es sich selbst beendete; nichts wird je gesendet</translation>
    </message>
    <message>
        <source>Work o&amp;ut the look</source>
        <translation>Lo&amp;ok berechnen</translation>
    </message>
    <message>
        <source>The plan was opened without the look; this works it out now</source>
        <translation>Der Plan wurde ohne Look geöffnet; dies berechnet ihn jetzt</translation>
    </message>
    <message>
        <source>The look is worked out by itself</source>
        <translation>Der Look wird von selbst berechnet</translation>
    </message>
    <message>
        <source>This plan may only be read: it is open elsewhere. Change it anyway, or work on a copy</source>
        <translation>Dieser Plan darf nur gelesen werden: Er ist anderswo offen. Trotzdem ändern oder an einer Kopie arbeiten</translation>
    </message>
    <message>
        <source>The report is on the clipboard. Nothing was sent.</source>
        <translation>Der Bericht ist in der Zwischenablage. Nichts wurde gesendet.</translation>
    </message>
    <message>
        <source>This folder does not let the program write beside %1. If it is opened elsewhere too, you are not told; and where saving fails, a copy elsewhere is offered.</source>
        <translation>In diesem Ordner darf das Programm neben %1 nichts schreiben. Wird der Plan auch anderswo geöffnet, erfahren Sie es nicht; und misslingt das Speichern, wird eine Kopie anderswo angeboten.</translation>
    </message>
    <message>
        <source>Change it anyway</source>
        <translation>Trotzdem ändern</translation>
    </message>
    <message>
        <source>Work on a copy</source>
        <translation>An einer Kopie arbeiten</translation>
    </message>
    <message>
        <source>Just look</source>
        <translation>Nur ansehen</translation>
    </message>
    <message>
        <source>Not done: %1.</source>
        <translation>Nicht ausgeführt: %1.</translation>
    </message>
    <message>
        <source>%1 was saved meanwhile by someone else or another program; you have changes here too.</source>
        <translation>%1 wurde inzwischen von jemand anderem oder einem anderen Programm gespeichert; auch hier gibt es Änderungen.</translation>
    </message>
    <message>
        <source>%1 was saved meanwhile by someone else or another program.</source>
        <translation>%1 wurde inzwischen von jemand anderem oder einem anderen Programm gespeichert.</translation>
    </message>
    <message>
        <source>Keep mine</source>
        <translation>Meine behalten</translation>
    </message>
    <message>
        <source>Yours stays, unsaved, with the taps, visits and agreed pictures of both. Your next save replaces the other version, which stands beside it as %1.previous until the save after that; Save as… keeps both.</source>
        <translation>Ihre Fassung bleibt, nicht gespeichert, mit Einträgen, Besuchen und vereinbarten Bildern beider. Ihr nächstes Speichern ersetzt die andere, die bis zum übernächsten Speichern als %1.previous daneben steht; Speichern unter… behält beide.</translation>
    </message>
    <message>
        <source>Decide later</source>
        <translation>Später entscheiden</translation>
    </message>
    <message>
        <source>%1 is not there any more: it was moved, renamed or deleted. It is still open in this window; save it to keep it.</source>
        <translation>%1 ist nicht mehr da: verschoben, umbenannt oder gelöscht. In diesem Fenster ist es noch offen; speichern, um es zu behalten.</translation>
    </message>
    <message>
        <source>Save it there again</source>
        <translation>Dort wieder speichern</translation>
    </message>
    <message>
        <source>Read anew from the disk</source>
        <translation>Vom Datenträger neu lesen</translation>
    </message>
    <message>
        <source>The program stopped because of an error in it.</source>
        <translation>Das Programm hielt wegen eines eigenen Fehlers an.</translation>
    </message>
    <message>
        <source>Work that was not saved is on the start page.</source>
        <translation>Arbeit, die nicht gespeichert war, steht auf der Startseite.</translation>
    </message>
    <message>
        <source>Show unsaved work</source>
        <translation>Ungespeicherte Arbeit zeigen</translation>
    </message>
    <message>
        <source>Read the report</source>
        <translation>Den Bericht lesen</translation>
    </message>
    <message>
        <source>Remove the report</source>
        <translation>Den Bericht entfernen</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>A report says where in the program; nothing was sent.</source>
        <translation>Ein Bericht sagt, wo im Programm; nichts wurde gesendet.</translation>
    </message>
    <message>
        <source>The reports were removed.</source>
        <translation>Die Berichte wurden entfernt.</translation>
    </message>
    <message>
        <source>“%1” stays. The start page offers it until you open or discard it.</source>
        <translation>„%1“ bleibt. Die Startseite bietet es an, bis Sie es öffnen oder verwerfen.</translation>
    </message>
    <message>
        <source>Show it</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Show them</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Open recovered</source>
        <translation>Wiederhergestellten öffnen</translation>
    </message>
    <message>
        <source>Open without the look</source>
        <translation>Ohne Look öffnen</translation>
    </message>
    <message>
        <source>“%1” has unsaved changes from last time.</source>
        <translation>„%1“ hat ungespeicherte Änderungen vom letzten Mal.</translation>
    </message>
    <message>
        <source>%1 plans have unsaved changes from last time.</source>
        <translation>%1 Pläne haben ungespeicherte Änderungen vom letzten Mal.</translation>
    </message>
    <message>
        <source>Recovered as it was. It is not saved in its file yet.</source>
        <translation>Wiederhergestellt, wie er war. Noch nicht in seiner Datei gespeichert.</translation>
    </message>
    <message>
        <source>Opened without the look, since the program ended with it before. The diagram can be changed and saved as always.</source>
        <translation>Ohne Look geöffnet, weil das Programm zuvor damit endete. Das Diagramm lässt sich wie immer ändern und speichern.</translation>
    </message>
    <message>
        <source>Work out the look</source>
        <translation>Look berechnen</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Jetzt nicht</translation>
    </message>
    <message>
        <source>“%1” was discarded. It can be put back until this window is closed.</source>
        <translation>„%1“ wurde verworfen. Es lässt sich zurücklegen, bis dieses Fenster geschlossen wird.</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Zurücklegen</translation>
    </message>
    <message>
        <source>“%1” could not be put back.</source>
        <translation>„%1“ ließ sich nicht zurücklegen.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Save a copy of the damaged file</source>
        <translation>Eine Kopie der beschädigten Datei speichern</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>The copy is in %1; the damaged file is still here too.</source>
        <translation>Die Kopie ist in %1; auch die beschädigte Datei ist noch hier.</translation>
    </message>
    <message>
        <source>How it&apos;s &amp;worn</source>
        <translation>Getr&amp;agen</translation>
    </message>
    <message>
        <source>Seen &amp;from</source>
        <translation>Gesehen a&amp;us</translation>
    </message>
    <message>
        <source>Judge contrast as it is seen from this far</source>
        <translation>Den Kontrast beurteilen, wie er aus dieser Entfernung zu sehen ist</translation>
    </message>
    <message>
        <source>L&amp;ight</source>
        <translation>L&amp;icht</translation>
    </message>
    <message>
        <source>Look at the hair in this light</source>
        <translation>Das Haar in diesem Licht ansehen</translation>
    </message>
    <message>
        <source>If it &amp;lifts</source>
        <translation>Wenn es au&amp;fhellt</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Weniger</translation>
    </message>
    <message>
        <source>As planned</source>
        <translation>Wie geplant</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>The look if the hair lightens this far within its span; test a strand to know it</source>
        <translation>Der Look, wenn das Haar in seiner Spanne so weit aufhellt; nur eine Probesträhne zeigt es</translation>
    </message>
    <message>
        <source>We&amp;t hair</source>
        <translation>&amp;Nasses Haar</translation>
    </message>
    <message>
        <source>Hair wet or dry: wet hair looks darker than it dries</source>
        <translation>Haar nass oder trocken: Nasses Haar sieht dunkler aus, als es trocknet</translation>
    </message>
    <message>
        <source>&amp;Before toner</source>
        <translation>&amp;Vor dem Toner</translation>
    </message>
    <message>
        <source>The hair bare, before its toner, or after it</source>
        <translation>Das Haar vor dem Toner oder danach</translation>
    </message>
    <message>
        <source>Hair as it is to&amp;day</source>
        <translation>Haar, wie es &amp;heute ist</translation>
    </message>
    <message>
        <source>The hair as it came in, or as planned</source>
        <translation>Das Haar, wie es heute ist, oder wie geplant</translation>
    </message>
    <message>
        <source>&amp;Assumptions</source>
        <translation>&amp;Annahmen</translation>
    </message>
    <message>
        <source>What the look rests on where nobody measured: every number, its range, where it comes from</source>
        <translation>Worauf der Look beruht, wo niemand gemessen hat: jede Zahl, ihre Spanne, ihre Herkunft</translation>
    </message>
    <message>
        <source>How a r&amp;eading came about</source>
        <translation>&amp;Wie ein Wert entstand</translation>
    </message>
    <message>
        <source>Colour, range, contrast and what moves it most, for the whole head or one region</source>
        <translation>Farbe, Spanne, Kontrast und was am meisten bewegt, für den ganzen Kopf oder eine Partie</translation>
    </message>
    <message>
        <source>Fold &amp;the readings</source>
        <translation>Werte einkla&amp;ppen</translation>
    </message>
    <message>
        <source>One line of readings leaves more room for the sheet; low and tall windows each remember</source>
        <translation>Eine Zeile Werte lässt dem Kopfblatt mehr Platz; niedrige und hohe Fenster merken sich je ihre</translation>
    </message>
    <message>
        <source>Its backcomb was taken out: on tight curls it is chosen by hand, never preset.</source>
        <translation>Das Toupieren wurde herausgenommen: Bei engen Locken wird es von Hand gewählt, nie vorgegeben.</translation>
    </message>
    <message>
        <source>The section “%1” has no room for a piece on this head.</source>
        <translation>Die Abteilung „%1“ hat auf diesem Kopf keinen Platz für eine Strähne.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Pat&amp;terns…</source>
        <translation>&amp;Muster…</translation>
    </message>
    <message>
        <source>Whole heads and parts of one to start from: what each is good for, and for which hair it is not</source>
        <translation>Ganze Köpfe und Teile davon zum Beginnen: wofür jedes gut ist und für welches Haar nicht</translation>
    </message>
    <message>
        <source>Patterns</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>Save selected sections as a &amp;pattern…</source>
        <translation>Gewählte Abteilungen als Muster s&amp;peichern…</translation>
    </message>
    <message>
        <source>Keep the selected sections with their rules for other heads</source>
        <translation>Die gewählten Abteilungen mit ihren Regeln für andere Köpfe behalten</translation>
    </message>
    <message>
        <source>Select a section, or a piece in one, first</source>
        <translation>Zuerst eine Abteilung oder eine Strähne darin wählen</translation>
    </message>
    <message>
        <source>“%1” is kept with your patterns.</source>
        <translation>„%1“ steht bei Ihren Mustern.</translation>
    </message>
    <message>
        <source>“%1” was deleted.</source>
        <translation>„%1“ wurde gelöscht.</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>Save the changes before the new plan begins?</source>
        <translation>Die Änderungen speichern, bevor der neue Plan beginnt?</translation>
    </message>
    <message>
        <source>“%1” cannot be used here. %2</source>
        <translation>„%1“ lässt sich hier nicht verwenden. %2</translation>
    </message>
    <message>
        <source>Use the pattern “%1”</source>
        <translation>Das Muster „%1“ verwenden</translation>
    </message>
    <message>
        <source>“%1” came with %2 pieces in %3 sections; type their levels.</source>
        <translation>„%1“ brachte %2 Strähnen in %3 Abteilungen; ihre Tonhöhen eintragen.</translation>
    </message>
    <message>
        <source>What is open cannot be remembered for the next start: %1</source>
        <translation>Was offen ist, lässt sich nicht für den nächsten Start merken: %1</translation>
    </message>
    <message>
        <source>The program ended soon after its last starts. What was open is not opened by itself this time.</source>
        <translation>Das Programm endete bald nach seinen letzten Starts. Was offen war, wird diesmal nicht von selbst geöffnet.</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>Was open the last time and is not there any more: %1.</source>
        <translation>War zuletzt offen und ist nicht mehr da: %1.</translation>
    </message>
    <message>
        <source>New &amp;window</source>
        <translation>Neues F&amp;enster</translation>
    </message>
    <message>
        <source>A second window, for another plan beside this one</source>
        <translation>Ein zweites Fenster, für einen anderen Plan neben diesem</translation>
    </message>
    <message>
        <source>C&amp;lose the window</source>
        <translation>Fenster s&amp;chließen</translation>
    </message>
    <message>
        <source>Close this window only; asks when its plan is not saved</source>
        <translation>Nur dieses Fenster schließen; fragt, wenn sein Plan nicht gespeichert ist</translation>
    </message>
    <message>
        <source>Preference&amp;s…</source>
        <translation>Einste&amp;llungen…</translation>
    </message>
    <message>
        <source>Preferences</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>&amp;Keys…</source>
        <translation>Taste&amp;n…</translation>
    </message>
    <message>
        <source>See the keys of all commands and give them others</source>
        <translation>Die Tasten aller Befehle sehen und ihnen andere geben</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>&amp;Needs a look</source>
        <translation>B&amp;itte ansehen</translation>
    </message>
    <message>
        <source>What to check before work; choose a line to select its pieces</source>
        <translation>Was vor der Arbeit zu prüfen ist; eine Zeile wählen, um ihre Strähnen zu wählen</translation>
    </message>
    <message>
        <source>Cards &amp;wider</source>
        <translation>Karten br&amp;eiter</translation>
    </message>
    <message>
        <source>Give the cards more room, the sheet less; the edge between them can be dragged too</source>
        <translation>Den Karten mehr Platz geben, dem Kopfblatt weniger; die Kante dazwischen lässt sich auch ziehen</translation>
    </message>
    <message>
        <source>Cards narr&amp;ower</source>
        <translation>Karten sch&amp;maler</translation>
    </message>
    <message>
        <source>Give the sheet more room, the cards less</source>
        <translation>Dem Kopfblatt mehr Platz geben, den Karten weniger</translation>
    </message>
    <message>
        <source>The hints come again at their places.</source>
        <translation>Die Hinweise kommen an ihren Stellen wieder.</translation>
    </message>
    <message>
        <source>Some keys of your settings could not be used; those commands have their own. %1</source>
        <translation>Einige Tasten Ihrer Einstellungen waren nicht zu gebrauchen; diese Befehle haben ihre eigenen. %1</translation>
    </message>
    <message>
        <source>Show the keys</source>
        <translation>Die Tasten zeigen</translation>
    </message>
    <message>
        <source>Forget them</source>
        <translation>Vergessen</translation>
    </message>
    <message>
        <source>Nothing is placed yet. %1 draws a section and %2 lays it out; %3 draws one piece, %4 puts one across the back.</source>
        <translation>Noch ist nichts platziert. %1 zeichnet eine Abteilung und %2 legt sie aus; %3 zeichnet eine Strähne, %4 legt eine quer über den Hinterkopf.</translation>
    </message>
    <message>
        <source>Drag the square for the thickness, the diamond for where light starts. Arrow keys move the piece by 1 mm, with Shift 10, with Alt 0.1.</source>
        <translation>Das Quadrat ziehen für die Dicke, die Raute für den Beginn des Hellen. Pfeiltasten verschieben die Strähne um 1 mm, mit Umschalt um 10, mit Alt um 0,1.</translation>
    </message>
    <message>
        <source>“Needs a look”, top right or %1, lists what to check before work.</source>
        <translation>„Bitte ansehen“, oben rechts oder %1, führt auf, was vor der Arbeit zu prüfen ist.</translation>
    </message>
    <message>
        <source>Pull the line across a view: diagram on one side, look on the other. %1 and %2 show only one of them.</source>
        <translation>Die Linie über eine Ansicht ziehen: Diagramm auf der einen Seite, Look auf der anderen. %1 und %2 zeigen nur eines davon.</translation>
    </message>
    <message>
        <source>%1 finds any command by a word of what you want to do.</source>
        <translation>%1 findet jeden Befehl über ein Wort von dem, was Sie tun möchten.</translation>
    </message>
    <message>
        <source>Clie&amp;nt</source>
        <translation>Ku&amp;ndenakte</translation>
    </message>
    <message>
        <source>Order, bowls, foils and minutes of this placement</source>
        <translation>Reihenfolge, Schalen, Folien und Minuten dieser Platzierung</translation>
    </message>
    <message>
        <source>Work list</source>
        <translation>Arbeitsliste</translation>
    </message>
    <message>
        <source>What is placed, looked at, taken out and rinsed, as it happens</source>
        <translation>Was aufgetragen, angesehen, herausgenommen und ausgespült wird, während es geschieht</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Protokoll</translation>
    </message>
    <message>
        <source>Which level came where; try a finish or put depth back, as you type it</source>
        <translation>Welche Tonhöhe wo herauskam; einen Endton ausprobieren oder Tiefe zurückbringen, wie Sie es eintragen</translation>
    </message>
    <message>
        <source>After the rinse</source>
        <translation>Nach dem Ausspülen</translation>
    </message>
    <message>
        <source>Levels piece by piece, and what this head says of your own speed and amounts</source>
        <translation>Tonhöhen Strähne für Strähne und was dieser Kopf über Ihr eigenes Tempo und Ihre Mengen sagt</translation>
    </message>
    <message>
        <source>Planned and got</source>
        <translation>Geplant und erreicht</translation>
    </message>
    <message>
        <source>What shows by then, which pieces to repeat, and the plan for it</source>
        <translation>Was sich bis dahin zeigt, welche Strähnen zu wiederholen sind, und der Plan dafür</translation>
    </message>
    <message>
        <source>Next visit</source>
        <translation>Nächster Besuch</translation>
    </message>
    <message>
        <source>Save them before the next visit&apos;s plan begins?</source>
        <translation>Sie speichern, bevor der Plan des nächsten Besuchs beginnt?</translation>
    </message>
    <message>
        <source>This is the next visit&apos;s plan, not saved yet; the plan before is as it was. Condition and porosity are blank: check them anew.</source>
        <translation>Das ist der Plan des nächsten Besuchs, noch nicht gespeichert; der Plan davor ist, wie er war. Zustand und Porosität sind leer: neu prüfen.</translation>
    </message>
    <message>
        <source>Leave %1 pieces that need no repeat</source>
        <translation>%1 Strähnen lassen, die keine Wiederholung brauchen</translation>
    </message>
    <message>
        <source>%1 pieces that need no repeat were taken off; undo brings them back.</source>
        <translation>%1 Strähnen, die keine Wiederholung brauchen, wurden herausgenommen; Rückgängig bringt sie wieder.</translation>
    </message>
    <message>
        <source>Open or begin a plan, and let its look be worked out</source>
        <translation>Einen Plan öffnen oder beginnen und seinen Look berechnen lassen</translation>
    </message>
    <message>
        <source>For the &amp;client</source>
        <translation>Kundenansi&amp;cht</translation>
    </message>
    <message>
        <source>Fo&amp;r a class</source>
        <translation>Fü&amp;r eine Klasse</translation>
    </message>
    <message>
        <source>The pattern foil by foil with its reasons, large, with a blank head to draw on</source>
        <translation>Das Muster Folie für Folie mit seinen Gründen, groß, mit einem leeren Kopf zum Zeichnen</translation>
    </message>
    <message>
        <source>The student&apos;s plan</source>
        <translation>Der Plan der Lernenden</translation>
    </message>
    <message>
        <source>Plans (*.json)</source>
        <translation>Pläne (*.json)</translation>
    </message>
    <message>
        <source>Co&amp;nsultation</source>
        <translation>&amp;Beratung</translation>
    </message>
    <message>
        <source>What the client wants, what to ask, tests, visits; kept apart from the plan</source>
        <translation>Was gewünscht ist, was zu fragen ist, Tests, Besuche; getrennt vom Plan aufbewahrt</translation>
    </message>
    <message>
        <source>Client</source>
        <translation>Beratung</translation>
    </message>
    <message>
        <source>Add &amp;photos…</source>
        <translation>&amp;Fotos hinzufügen…</translation>
    </message>
    <message>
        <source>Photos of what the client likes and does not like, beside the plan</source>
        <translation>Fotos von dem, was gefällt und was nicht gefällt, neben dem Plan</translation>
    </message>
    <message>
        <source>Open a plan and write the client&apos;s consent down first</source>
        <translation>Zuerst einen Plan öffnen und das Einverständnis der Person notieren</translation>
    </message>
    <message>
        <source>Nothing is kept of a client yet</source>
        <translation>Es wird noch keine Kundenakte aufbewahrt</translation>
    </message>
    <message>
        <source>&amp;Hand over what is kept…</source>
        <translation>&amp;Aushändigen, was aufbewahrt wird…</translation>
    </message>
    <message>
        <source>A folder that the client can read: text, JSON and photos</source>
        <translation>Ein lesbarer Ordner zum Mitgeben: Text, JSON und Fotos</translation>
    </message>
    <message>
        <source>&amp;Delete this client…</source>
        <translation>Diese Kundenakte &amp;löschen…</translation>
    </message>
    <message>
        <source>Turns to where all that is kept of this client can be deleted</source>
        <translation>Geht dorthin, wo sich alles löschen lässt, was zu dieser Person aufbewahrt wird</translation>
    </message>
    <message>
        <source>&amp;Clients…</source>
        <translation>&amp;Kundenakten…</translation>
    </message>
    <message>
        <source>All clients that are kept; shows their names, so turn the screen away from others</source>
        <translation>Alle Kundenakten, die aufbewahrt werden; zeigt Namen, darum den Bildschirm von anderen wegdrehen</translation>
    </message>
    <message>
        <source>Share a cop&amp;y…</source>
        <translation>Kopie &amp;weitergeben…</translation>
    </message>
    <message>
        <source>What you typed about the client could not be kept yet: %1. It is tried again.</source>
        <translation>Was Sie in die Kundenakte eingetragen haben, ließ sich noch nicht aufbewahren: %1. Es wird noch einmal versucht.</translation>
    </message>
    <message>
        <source>The photo was not added: %1</source>
        <translation>Das Foto wurde nicht hinzugefügt: %1</translation>
    </message>
    <message>
        <source>Add photos beside “%1”</source>
        <translation>Fotos neben „%1“ hinzufügen</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png *.webp);;All files (*)</source>
        <translation>Fotos (*.jpg *.jpeg *.png *.webp);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>A new folder for what is kept</source>
        <translation>Ein neuer Ordner für das, was aufbewahrt wird</translation>
    </message>
    <message>
        <source>what-is-kept</source>
        <translation>was-aufbewahrt-wird</translation>
    </message>
    <message>
        <source>What is kept of the client stands in %1: text, JSON and photos. It is a copy that this program does not look after.</source>
        <translation>Der Inhalt der Kundenakte steht in %1: Text, JSON und Fotos. Es ist eine Kopie, um die sich dieses Programm nicht kümmert.</translation>
    </message>
    <message>
        <source>What is kept of the client stands in %1; %2 photos are missing, since their files could not be read.</source>
        <translation>Der Inhalt der Kundenakte steht in %1; %2 Fotos fehlen, weil ihre Dateien nicht lesbar waren.</translation>
    </message>
    <message>
        <source>A plan of this client is open in another window: close it first, so that nothing of it stays.</source>
        <translation>Ein Plan zu dieser Person ist in einem anderen Fenster offen: zuerst schließen, damit nichts davon bleibt.</translation>
    </message>
    <message>
        <source>All that was typed about the client is deleted. Earlier versions of the plan could not be, %1 of them: they may be open in another program. Close it and delete again.</source>
        <translation>Alles, was in die Kundenakte eingetragen wurde, ist gelöscht. Frühere Stände des Plans ließen sich nicht löschen, %1 davon: Sie sind vielleicht in einem anderen Programm offen. Schließen Sie es und löschen Sie noch einmal.</translation>
    </message>
    <message>
        <source>Kept of clients for longer than the %1 months that you set: %2. Nothing is deleted by itself.</source>
        <translation>Kundenakten, die länger aufbewahrt sind als die %1 Monate, die Sie gesetzt haben: %2. Nichts wird von selbst gelöscht.</translation>
    </message>
    <message>
        <source>Decide</source>
        <translation>Entscheiden</translation>
    </message>
    <message>
        <source>Share a copy of the plan</source>
        <translation>Eine Kopie des Plans weitergeben</translation>
    </message>
    <message>
        <source>%1 is there already, and its earlier version would stay beside the copy. Choose a new name.</source>
        <translation>%1 gibt es schon, und der frühere Stand bliebe neben der Kopie. Wählen Sie einen neuen Namen.</translation>
    </message>
    <message>
        <source>Hando&amp;ut…</source>
        <translation>&amp;Handzettel…</translation>
    </message>
    <message>
        <source>The printed lesson: choose its parts, type its texts, see its pages</source>
        <translation>Die gedruckte Lektion: ihre Teile wählen, ihre Texte schreiben, ihre Seiten ansehen</translation>
    </message>
    <message>
        <source>Handout</source>
        <translation>Handzettel</translation>
    </message>
    <message>
        <source>&amp;Record card…</source>
        <translation>K&amp;arteikarte…</translation>
    </message>
    <message>
        <source>Everything that is needed to do it again, as pages</source>
        <translation>Alles, was nötig ist, um es noch einmal zu machen, als Seiten</translation>
    </message>
    <message>
        <source>Record card</source>
        <translation>Karteikarte</translation>
    </message>
    <message>
        <source>Client&apos;s page…</source>
        <translation>Kundenblatt…</translation>
    </message>
    <message>
        <source>One page for the client: the picture, what the plan shows, how to look after it</source>
        <translation>Eine Seite zum Mitgeben: das Bild, was der Plan zeigt, Pflege danach</translation>
    </message>
    <message>
        <source>Client&apos;s page</source>
        <translation>Kundenblatt</translation>
    </message>
    <message>
        <source>Open Handout, Record card or Client&apos;s page first</source>
        <translation>Zuerst Handzettel, Karteikarte oder Kundenblatt öffnen</translation>
    </message>
    <message>
        <source>Save &amp;the pages as…</source>
        <translation>Seiten s&amp;peichern unter…</translation>
    </message>
    <message>
        <source>Write the pages as PDF, or as SVG or PNG with a file for each</source>
        <translation>Die Seiten als PDF schreiben oder als SVG oder PNG mit einer Datei für jede</translation>
    </message>
    <message>
        <source>Print th&amp;e pages…</source>
        <translation>Seiten &amp;drucken…</translation>
    </message>
    <message>
        <source>Print pre&amp;view…</source>
        <translation>Druck&amp;vorschau…</translation>
    </message>
    <message>
        <source>Come back to the desk first</source>
        <translation>Zuerst an den Arbeitsplatz zurückkommen</translation>
    </message>
    <message>
        <source>Theme, text size, units, what a new piece begins with, policy, rates, hints</source>
        <translation>Farben, Textgröße, Einheiten, womit eine neue Strähne beginnt, eigene Regeln, Sätze, Hinweise</translation>
    </message>
    <message>
        <source>Bowls, steps and foils in order as pages, to print or to save</source>
        <translation>Schalen, Schritte und Folien in ihrer Reihenfolge als Seiten, zum Drucken oder Speichern</translation>
    </message>
    <message>
        <source>On paper</source>
        <translation>Auf Papier</translation>
    </message>
    <message>
        <source>Open Handout, Record card, Client&apos;s page or Work list first</source>
        <translation>Zuerst Handzettel, Karteikarte, Kundenblatt oder Arbeitsliste öffnen</translation>
    </message>
    <message>
        <source>Choose a printer for the pages that are shown; at an appointment, for its work list</source>
        <translation>Einen Drucker für die gezeigten Seiten wählen; bei einem Termin für seine Arbeitsliste</translation>
    </message>
    <message>
        <source>&amp;Appointment</source>
        <translation>Be&amp;handlung</translation>
    </message>
    <message>
        <source>the last tap</source>
        <translation>den letzten Eintrag</translation>
    </message>
    <message>
        <source>&amp;Work list…</source>
        <translation>&amp;Arbeitsliste…</translation>
    </message>
    <message>
        <source>Appointment &amp;log…</source>
        <translation>Terminprot&amp;okoll…</translation>
    </message>
    <message>
        <source>Work list on &amp;paper…</source>
        <translation>Arbeitsliste auf Pa&amp;pier…</translation>
    </message>
    <message>
        <source>&amp;After the rinse…</source>
        <translation>Nach dem A&amp;usspülen…</translation>
    </message>
    <message>
        <source>Planned and &amp;got…</source>
        <translation>&amp;Geplant und erreicht…</translation>
    </message>
    <message>
        <source>&amp;Next visit…</source>
        <translation>&amp;Nächster Besuch…</translation>
    </message>
    <message>
        <source>See the same pages as a print, in a window of their own</source>
        <translation>Dieselben Seiten als Druck ansehen, in einem eigenen Fenster</translation>
    </message>
    <message>
        <source>Not all went well with the pages: %1</source>
        <translation>Nicht alles ging gut mit den Seiten: %1</translation>
    </message>
    <message>
        <source>Pages are still being written.</source>
        <translation>Es werden noch Seiten geschrieben.</translation>
    </message>
    <message>
        <source>Stop and close</source>
        <translation>Anhalten und schließen</translation>
    </message>
    <message>
        <source>Wait</source>
        <translation>Warten</translation>
    </message>
    <message>
        <source>Go on working</source>
        <translation>Weiterarbeiten</translation>
    </message>
    <message>
        <source>Today beside a choice, large, for fingers. No lock: stay beside it.</source>
        <translation>Heute neben einer Variante, groß, für Finger. Keine Sperre: dabeibleiben.</translation>
    </message>
    <message>
        <source>A copy without client data, notes, photos, agreed picture, visits and log. Title, formulas, texts and names that you gave go along</source>
        <translation>Eine Kopie ohne Kundendaten, Notizen, Fotos, vereinbartes Bild, Besuche und Protokoll. Titel, Rezepturen, Texte und Namen, die Sie gegeben haben, gehen mit</translation>
    </message>
    <message>
        <source>Deleted: what was kept of the client, and this plan. Still there, if you made them: plans of other visits, pages and PDFs, handed-over folders, backups. Delete those yourself.</source>
        <translation>Gelöscht: die Kundenakte und dieser Plan. Noch da, wenn Sie sie gemacht haben: Pläne anderer Besuche, Seiten und PDFs, ausgehändigte Ordner, Sicherungen. Diese selbst löschen.</translation>
    </message>
    <message>
        <source>Deleted: what was kept of the client. Still there: all plans, and, if you made them, pages and PDFs, handed-over folders, backups. Delete yourself what is to go too.</source>
        <translation>Gelöscht: die Kundenakte. Noch da: alle Pläne und, wenn Sie sie gemacht haben, Seiten und PDFs, ausgehändigte Ordner, Sicherungen. Selbst löschen, was auch weg soll.</translation>
    </message>
    <message>
        <source>%1 is a copy without client data, notes, photos, agreed picture, visits and log. What goes along: the title “%2”, head and hair with their history, formulas, handout texts, and the names you gave to choices, sections and pieces. Look through them before you send it.</source>
        <translation>%1 ist eine Kopie ohne Kundendaten, Notizen, Fotos, vereinbartes Bild, Besuche und Protokoll. Es gehen mit: der Titel „%2“, Kopf und Haar mit Vorgeschichte, Rezepturen, Texte des Handzettels und die Namen, die Sie Varianten, Abteilungen und Strähnen gegeben haben. Vor dem Verschicken durchsehen.</translation>
    </message>
    <message>
        <source>Save the plan under another name, for the same client</source>
        <translation>Den Plan unter anderem Namen speichern, für dieselbe Person</translation>
    </message>
    <message>
        <source>Begin another client&apos;s plan with it</source>
        <translation>Damit Plan für andere Person beginnen</translation>
    </message>
    <message>
        <source>The drawing as a new plan: without client data, notes, photos, agreed picture, visits and log</source>
        <translation>Die Zeichnung als neuer Plan: ohne Kundendaten, Notizen, Fotos, vereinbartes Bild, Besuche und Protokoll</translation>
    </message>
    <message>
        <source>Do not save…</source>
        <translation>Nicht speichern …</translation>
    </message>
    <message>
        <source>“%1” was never saved: all of it goes for good.</source>
        <translation>„%1“ wurde nie gespeichert: Alles davon geht endgültig verloren.</translation>
    </message>
    <message>
        <source>What was changed in “%1” since its last save goes for good.</source>
        <translation>Was in „%1“ seit dem letzten Speichern geändert wurde, geht endgültig verloren.</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Wegwerfen</translation>
    </message>
    <message>
        <source>Save them before the other client&apos;s plan begins?</source>
        <translation>Vor dem Plan für die andere Person speichern?</translation>
    </message>
    <message>
        <source>A new plan, begun with the drawing of “%1” and not saved yet. Look at its title, its head and hair with their history, its formulas and texts: they came along. Nothing of the client did.</source>
        <translation>Ein neuer Plan, mit der Zeichnung von „%1“ begonnen und noch nicht gespeichert. Titel, Kopf und Haar mit Vorgeschichte, Rezepturen und Texte ansehen: Sie kamen mit. Kundendaten kamen nicht mit.</translation>
    </message>
    <message>
        <source>This is what %1 was before its last save, as a plan that is not saved yet.</source>
        <translation>Das ist %1, wie es vor dem letzten Speichern war, als Plan, der noch nicht gespeichert ist.</translation>
    </message>
    <message>
        <source>%1 The version before its last save is beside it.</source>
        <translation>%1 Die Fassung vor dem letzten Speichern liegt daneben.</translation>
    </message>
    <message>
        <source>Open the version before, as a copy</source>
        <translation>Die Fassung davor als Kopie öffnen</translation>
    </message>
    <message>
        <source>%1 was saved by someone else meanwhile. Yours is still here, not saved. If you put it in its place, theirs is kept beside it until the save after that; taps, visits and agreed pictures are put together where that can be.</source>
        <translation>%1 wurde inzwischen anderswo gespeichert. Ihre Fassung ist noch hier, nicht gespeichert. Wenn Sie sie an deren Stelle setzen, bleibt die andere bis zum übernächsten Speichern daneben; Einträge, Besuche und vereinbarte Bilder werden zusammengeführt, wo das geht.</translation>
    </message>
    <message>
        <source>Put mine in its place</source>
        <translation>Meine an die Stelle setzen</translation>
    </message>
    <message>
        <source>Save the plan; its name is seen: by the plan, not by a person</source>
        <translation>Plan speichern; der Name ist sichtbar: nach dem Plan benennen, nicht nach einer Person</translation>
    </message>
    <message>
        <source>Not saved. %1.</source>
        <translation>Nicht gespeichert. %1.</translation>
    </message>
    <message>
        <source>%1 Your work is still open here, and the file holds what it held before. Do not close this window.</source>
        <translation>%1 Ihre Arbeit ist hier noch offen, und die Datei enthält, was sie vorher enthielt. Dieses Fenster nicht schließen.</translation>
    </message>
    <message>
        <source>%1 Your work is still open here. Do not close this window.</source>
        <translation>%1 Ihre Arbeit ist hier noch offen. Dieses Fenster nicht schließen.</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Noch einmal versuchen</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>in %1</translation>
    </message>
    <message>
        <source>in %1 on the computer “%2”</source>
        <translation>in %1 auf dem Rechner „%2“</translation>
    </message>
    <message>
        <source>Change a plan that is open elsewhere too; whoever saves second must choose between the two</source>
        <translation>Einen Plan ändern, der auch anderswo offen ist; wer als Zweites speichert, muss zwischen beiden wählen</translation>
    </message>
    <message>
        <source>What may only be read becomes a plan of your own for the same client, not saved yet</source>
        <translation>Was nur gelesen werden darf, wird ein eigener Plan für dieselbe Person, noch nicht gespeichert</translation>
    </message>
    <message>
        <source>%1 is already open %2. Looking changes nothing. If it is changed in both places, whoever saves second must choose between the two.</source>
        <translation>%1 ist schon offen, %2. Ansehen ändert nichts. Wird es an beiden Stellen geändert, muss wählen, wer als Zweites speichert.</translation>
    </message>
    <message>
        <source>This is a copy for the same client, not saved yet: it keeps the client&apos;s answers, the agreed picture and the log. For another client: Plan, Begin another client&apos;s plan with it.</source>
        <translation>Das ist eine Kopie für dieselbe Person, noch nicht gespeichert: ihre Antworten, vereinbartes Bild und Protokoll bleiben dabei. Für eine andere Person: Plan, Damit Plan für andere Person beginnen.</translation>
    </message>
    <message>
        <source>What was typed about the client since it was last on the disk goes for good.</source>
        <translation>Was in die Kundenakte eingetragen wurde, seit sie zuletzt auf dem Datenträger war, geht endgültig verloren.</translation>
    </message>
    <message>
        <source>What you typed about the client is not on the disk: %1.</source>
        <translation>Was Sie in die Kundenakte eingetragen haben, ist nicht auf dem Datenträger: %1.</translation>
    </message>
    <message>
        <source>All that was typed about the client is deleted. What was kept while you worked on the plan is not off the disk yet, since the disk does not answer. It goes as soon as the disk does; leave the program open until then.</source>
        <translation>Alles, was in die Kundenakte eingetragen wurde, ist gelöscht. Was während der Arbeit am Plan aufbewahrt wurde, ist noch nicht vom Datenträger gelöscht, weil er nicht antwortet. Das geschieht, sobald er antwortet; das Programm bis dahin offen lassen.</translation>
    </message>
    <message>
        <source>Your changes would give way to what stands in %1. Undo brings back all but agreed picture, visits and log until you close this window. Of these, the file&apos;s and yours are put together; where that cannot be, yours stay.</source>
        <translation>Ihre Änderungen würden dem weichen, was in %1 steht. Rückgängig bringt alles außer vereinbartem Bild, Besuchen und Protokoll zurück, bis Sie dieses Fenster schließen. Diese werden aus der Datei und Ihren zusammengeführt; wo das nicht geht, bleiben Ihre.</translation>
    </message>
    <message>
        <source>the agreed picture</source>
        <translation>das vereinbarte Bild</translation>
    </message>
    <message>
        <source>the visits</source>
        <translation>die Besuche</translation>
    </message>
    <message>
        <source>the log</source>
        <translation>das Protokoll</translation>
    </message>
    <message>
        <source>Read anew, except: %1. What stands in %2 of it cannot be put together with yours: one of the two cannot be read by this program, or both are too much for one file. Yours stays. Your next save replaces the file&apos;s, which stands beside it as %2.previous until the save after that; Save as… keeps both.</source>
        <translation>Neu gelesen, außer: %1. Was davon in %2 steht, lässt sich mit Ihrem nicht zusammenführen: Eines von beiden kann dieses Programm nicht lesen, oder beide sind zu viel für eine Datei. Ihres bleibt. Ihr nächstes Speichern ersetzt das der Datei, das bis zum Speichern danach als %2.previous daneben steht; Speichern unter … behält beide.</translation>
    </message>
    <message>
        <source>Not changed: a file could not hold it. %1.</source>
        <translation>Nicht geändert: Eine Datei könnte es nicht enthalten. %1.</translation>
    </message>
    <message>
        <source>Your latest work is only in this window: %1. It is tried again. Do not close the window; save it on another disk.</source>
        <translation>Die letzte Arbeit ist nur in diesem Fenster: %1. Es wird weiter versucht. Fenster nicht schließen; auf einem anderen Datenträger speichern.</translation>
    </message>
    <message>
        <source>Save it elsewhere…</source>
        <translation>Anderswo speichern …</translation>
    </message>
    <message>
        <source>Leave and lose it…</source>
        <translation>Verlassen und verlieren …</translation>
    </message>
    <message>
        <source>“%1” has changes that are not saved. %2</source>
        <translation>„%1“ hat Änderungen, die nicht gespeichert sind. %2</translation>
    </message>
    <message>
        <source>Saved as %1. You go on in it; %2 stays as its last save left it.</source>
        <translation>Gespeichert als %1. Dort geht es weiter; %2 bleibt, wie zuletzt gespeichert.</translation>
    </message>
    <message>
        <source>Not read anew. %1. Yours is still open here, as it was.</source>
        <translation>Nicht neu gelesen. %1. Ihre Fassung ist hier noch offen, wie sie war.</translation>
    </message>
    <message>
        <source>Not opened, and left as it was: %1 is of a newer program (format %2; this one reads up to format %3). Open it where it was saved, or with a newer program.</source>
        <translation>Nicht geöffnet und so gelassen, wie sie war: %1 ist von einem neueren Programm (Format %2; dieses liest bis Format %3). Dort öffnen, wo sie gespeichert wurde, oder mit einem neueren Programm.</translation>
    </message>
    <message>
        <source>Not opened, and left as it was. %1.</source>
        <translation>Nicht geöffnet und so gelassen, wie sie war. %1.</translation>
    </message>
    <message>
        <source>%1 is write-protected. Saving would change it all the same.</source>
        <translation>%1 ist schreibgeschützt. Speichern würde es trotzdem ändern.</translation>
    </message>
    <message>
        <source>%1 was written, but the disk did not confirm it (%2): it may not outlive a power cut. Your work is still open here.</source>
        <translation>%1 wurde geschrieben, aber der Datenträger hat es nicht bestätigt (%2): Einen Stromausfall übersteht es vielleicht nicht. Ihre Arbeit ist hier noch offen.</translation>
    </message>
    <message>
        <source>This plan may only be read: its file is write-protected. Change it anyway, or work on a copy</source>
        <translation>Dieser Plan lässt sich nur lesen: Seine Datei ist schreibgeschützt. Trotzdem ändern oder an einer Kopie arbeiten</translation>
    </message>
    <message>
        <source>%1 is write-protected. Looking changes nothing. If you change it anyway, saving replaces it.</source>
        <translation>%1 ist schreibgeschützt. Ansehen ändert nichts. Wird es trotzdem geändert, ersetzt das Speichern die Datei.</translation>
    </message>
    <message>
        <source>Not changed: on a head like that %1 would lie off the hair, and the plan could not be saved. Move or remove it first.</source>
        <translation>Nicht geändert: Auf einem solchen Kopf läge %1 außerhalb des Haars, und der Plan ließe sich nicht speichern. Bitte zuerst verschieben oder entfernen.</translation>
    </message>
    <message>
        <source>Not read anew: %1 holds another client&apos;s plan now, and what is kept of this client stands in this window. Yours is still open here, as it was.</source>
        <translation>Nicht neu eingelesen: %1 enthält jetzt den Plan einer anderen Person, und in diesem Fenster steht, was über diese Person aufbewahrt wird. Ihr Plan ist hier unverändert offen.</translation>
    </message>
    <message>
        <source>Open it instead</source>
        <translation>Stattdessen öffnen</translation>
    </message>
    <message>
        <source>Yours stays, unsaved. Your next save replaces the other version, which stands beside it as %1.previous until the save after that; Save as… keeps both.</source>
        <translation>Ihre Fassung bleibt, nicht gespeichert. Ihr nächstes Speichern ersetzt die andere, die bis zum übernächsten Speichern als %1.previous daneben steht; Speichern unter… behält beide.</translation>
    </message>
    <message>
        <source>Of the other version these are not in yours: %1. It is another client&apos;s plan, one of the two cannot be read by this program, or both are too much for one file. The other version stands beside %2 as %2.previous until the save after that.</source>
        <translation>Aus der anderen Fassung ist dies nicht in Ihrer: %1. Sie ist der Plan einer anderen Person, oder dieses Programm kann eine der beiden nicht lesen, oder beide sind zu viel für eine Datei. Die andere steht bis zum übernächsten Speichern neben %2 als %2.previous.</translation>
    </message>
    <message>
        <source>“%1”: %2</source>
        <translation>„%1“: %2</translation>
    </message>
    <message>
        <source>Open the log</source>
        <translation>Protokoll öffnen</translation>
    </message>
    <message>
        <source>Discard it all the same</source>
        <translation>Trotzdem verwerfen</translation>
    </message>
    <message>
        <source>Keep for later</source>
        <translation>Für später behalten</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::MenuCorner</name>
    <message>
        <source>not saved yet</source>
        <translation>noch nicht gespeichert</translation>
    </message>
    <message>
        <source>%1: read only</source>
        <translation>%1: nur lesen</translation>
    </message>
    <message>
        <source>%1: not saved</source>
        <translation>%1: nicht gespeichert</translation>
    </message>
    <message>
        <source>%1: saved</source>
        <translation>%1: gespeichert</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::MessageBar</name>
    <message>
        <source>Message</source>
        <translation>Meldung</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::NewPlanPage</name>
    <message>
        <source>Questions for a new plan</source>
        <translation>Fragen für einen neuen Plan</translation>
    </message>
    <message>
        <source>New plan</source>
        <translation>Neuer Plan</translation>
    </message>
    <message>
        <source>Eight touches to the first look. Skip what you don&apos;t know: the usual value stands in, and everything can be typed exactly later.</source>
        <translation>Mit acht Griffen zum ersten Look. Überspringen, was Sie nicht wissen: Der übliche Wert springt ein, und alles lässt sich später genau eintragen.</translation>
    </message>
    <message>
        <source>Head size</source>
        <translation>Kopfgröße</translation>
    </message>
    <message>
        <source>Small</source>
        <translation>Klein</translation>
    </message>
    <message>
        <source>Medium</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>Large</source>
        <translation>Groß</translation>
    </message>
    <message>
        <source>or the tape measure round it</source>
        <translation>oder das Maßband darum</translation>
    </message>
    <message>
        <source>Round the head above the ears and over the widest place behind</source>
        <translation>Um den Kopf über den Ohren und über die weiteste Stelle hinten</translation>
    </message>
    <message>
        <source>How it falls</source>
        <translation>Wie es fällt</translation>
    </message>
    <message>
        <source>Straight</source>
        <translation>Glatt</translation>
    </message>
    <message>
        <source>Wavy</source>
        <translation>Wellig</translation>
    </message>
    <message>
        <source>Curly</source>
        <translation>Lockig</translation>
    </message>
    <message>
        <source>Tight curls</source>
        <translation>Enge Locken</translation>
    </message>
    <message>
        <source>Coils</source>
        <translation>Kraus</translation>
    </message>
    <message>
        <source>One hair is</source>
        <translation>Ein Haar ist</translation>
    </message>
    <message>
        <source>Fine</source>
        <translation>Fein</translation>
    </message>
    <message>
        <source>Coarse</source>
        <translation>Dick</translation>
    </message>
    <message>
        <source>How much hair</source>
        <translation>Wie viel Haar</translation>
    </message>
    <message>
        <source>Little</source>
        <translation>Wenig</translation>
    </message>
    <message>
        <source>A lot</source>
        <translation>Viel</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Short</source>
        <translation>Kurz</translation>
    </message>
    <message>
        <source>Chin</source>
        <translation>Kinn</translation>
    </message>
    <message>
        <source>Shoulder</source>
        <translation>Schulter</translation>
    </message>
    <message>
        <source>Long</source>
        <translation>Lang</translation>
    </message>
    <message>
        <source>Very long</source>
        <translation>Sehr lang</translation>
    </message>
    <message>
        <source>Usual part</source>
        <translation>Üblicher Scheitel</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keiner</translation>
    </message>
    <message>
        <source>Client&apos;s left</source>
        <translation>Linke Kopfseite</translation>
    </message>
    <message>
        <source>Middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>Client&apos;s right</source>
        <translation>Rechte Kopfseite</translation>
    </message>
    <message>
        <source>Where it swirls</source>
        <translation>Wo es wirbelt</translation>
    </message>
    <message>
        <source>Two swirls</source>
        <translation>Zwei Wirbel</translation>
    </message>
    <message>
        <source>Root</source>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Spitzen</translation>
    </message>
    <message>
        <source>How large is the head?</source>
        <translation>Wie groß ist der Kopf?</translation>
    </message>
    <message>
        <source>How does the hair fall?</source>
        <translation>Wie fällt das Haar?</translation>
    </message>
    <message>
        <source>How thick is one hair?</source>
        <translation>Wie dick ist ein Haar?</translation>
    </message>
    <message>
        <source>How much hair is there?</source>
        <translation>Wie viel Haar ist da?</translation>
    </message>
    <message>
        <source>How long is it?</source>
        <translation>Wie lang ist es?</translation>
    </message>
    <message>
        <source>Which level is it? 1 darkest, 10 lightest (up to 12)</source>
        <translation>Welche Tonhöhe hat es? 1 am dunkelsten, 10 am hellsten (bis 12)</translation>
    </message>
    <message>
        <source>Where is the usual part?</source>
        <translation>Wo ist der übliche Scheitel?</translation>
    </message>
    <message>
        <source>Where does it swirl at the crown?</source>
        <translation>Wo wirbelt es am Oberkopf?</translation>
    </message>
    <message>
        <source>Before any colour work, ask and look: how old is the client (product labels and local rules set an age), was there ever a reaction to colour or a black temporary tattoo, is the scalp sore, broken or irritated, what has the hair been through (henna, box colour, earlier lightening, metallic salts), which tests are due by the maker&apos;s directions? A passed test is no guarantee. In doubt do not go on; refer to a doctor. The maker&apos;s directions, local rules and licence, and the insurer come before anything shown here. None of these answers is kept in the plan.</source>
        <translation>Vor jeder Farbarbeit fragen und ansehen: Wie alt ist die Person (Produktangaben und örtliche Vorschriften setzen ein Alter), gab es je eine Reaktion auf Farbe oder eine aufgemalte schwarze Tätowierung, ist die Kopfhaut wund, verletzt oder gereizt, was hat das Haar hinter sich (Henna, Farbe aus der Packung, frühere Aufhellung, metallische Salze), welche Tests sind nach den Angaben des Herstellers fällig? Ein bestandener Test ist keine Garantie. Im Zweifel nicht weitermachen; ärztlich abklären lassen. Die Angaben des Herstellers, örtliche Vorschriften und Zulassung und die Versicherung gehen allem vor, was hier gezeigt wird. Keine dieser Antworten wird im Plan aufbewahrt.</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Hinterkopf</translation>
    </message>
    <message>
        <source>Show the look</source>
        <translation>Den Look zeigen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::OpeningChart</name>
    <message>
        <source>part</source>
        <translation>Scheitel</translation>
    </message>
    <message>
        <source>crown</source>
        <translation>Wirbelpartie</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>tied</source>
        <translation>gebunden</translation>
    </message>
    <message>
        <source>with the part at its usual place</source>
        <translation>mit dem Scheitel an seinem üblichen Platz</translation>
    </message>
    <message>
        <source>with the part %1 mm to client&apos;s right</source>
        <translation>mit dem Scheitel %1 mm zur rechten Kopfseite</translation>
    </message>
    <message>
        <source>with the part %1 mm to client&apos;s left</source>
        <translation>mit dem Scheitel %1 mm zur linken Kopfseite</translation>
    </message>
    <message>
        <source>with the crown opened</source>
        <translation>mit geöffneter Wirbelpartie</translation>
    </message>
    <message>
        <source>in the wind</source>
        <translation>im Wind</translation>
    </message>
    <message>
        <source>tied back</source>
        <translation>zurückgebunden</translation>
    </message>
    <message>
        <source>Blocks where the hair opens</source>
        <translation>Blöcke, wo das Haar sich öffnet</translation>
    </message>
    <message>
        <source>The largest light and the largest dark patch where the hair opens, in cm² of hair. Drag to wear the part there; left and right keys move it</source>
        <translation>Die größte helle und die größte dunkle Fläche, wo das Haar sich öffnet, in cm² Haar. Ziehen, um den Scheitel dort zu tragen; links und rechts bewegen ihn</translation>
    </message>
    <message>
        <source>Being worked out</source>
        <translation>Wird berechnet</translation>
    </message>
    <message>
        <source>Largest light patch %1 cm², %2</source>
        <translation>Größte helle Fläche %1 cm², %2</translation>
    </message>
    <message>
        <source>Largest dark patch %1 cm², %2</source>
        <translation>Größte dunkle Fläche %1 cm², %2</translation>
    </message>
    <message>
        <source>No patch stands out where the hair opens</source>
        <translation>Keine Fläche hebt sich ab, wo das Haar sich öffnet</translation>
    </message>
    <message>
        <source>Left out: part positions where there is no hair (%1 of 17)</source>
        <translation>Weggelassen: Scheitelstellen ohne Haar (%1 von 17)</translation>
    </message>
    <message>
        <source>cm² light ▬, dark ▨</source>
        <translation>cm² hell ▬, dunkel ▨</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>being worked out …</source>
        <translation>wird berechnet …</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::PatternsPage</name>
    <message>
        <source>Patterns</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>Sections with their rules. On another head they follow its hairline and their pieces are laid out anew; levels and formulas are for you to type. What is on the plan stays.</source>
        <translation>Abteilungen mit ihren Regeln. Auf einem anderen Kopf folgen sie dessen Haarlinie, und ihre Strähnen werden neu ausgelegt; Tonhöhen und Rezepturen sind selbst einzutragen. Was im Plan ist, bleibt.</translation>
    </message>
    <message>
        <source>Name of the pattern</source>
        <translation>Name des Musters</translation>
    </message>
    <message>
        <source>what it does, such as: soft sides, dark nape</source>
        <translation>was es tut, etwa: weiche Seiten, dunkler Nacken</translation>
    </message>
    <message>
        <source>What it is good for</source>
        <translation>Wofür es gut ist</translation>
    </message>
    <message>
        <source>For which hair it is not</source>
        <translation>Für welches Haar nicht</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Good for</source>
        <translation>Gut für</translation>
    </message>
    <message>
        <source>Not for</source>
        <translation>Nicht für</translation>
    </message>
    <message>
        <source>Save the pattern</source>
        <translation>Das Muster speichern</translation>
    </message>
    <message>
        <source>Do not save</source>
        <translation>Nicht speichern</translation>
    </message>
    <message>
        <source>A name is needed.</source>
        <translation>Ein Name ist nötig.</translation>
    </message>
    <message>
        <source>The name is too long: at most about %1 letters.</source>
        <translation>Der Name ist zu lang: höchstens etwa %1 Zeichen.</translation>
    </message>
    <message>
        <source>The texts are too long.</source>
        <translation>Die Texte sind zu lang.</translation>
    </message>
    <message>
        <source>A pattern of your own from the selected section</source>
        <translation>Ein eigenes Muster aus der gewählten Abteilung</translation>
    </message>
    <message>
        <source>A pattern of your own from %1 selected sections</source>
        <translation>Ein eigenes Muster aus %1 gewählten Abteilungen</translation>
    </message>
    <message>
        <source>Not every pattern could be read; the others are below.</source>
        <translation>Nicht jedes Muster war lesbar; die anderen stehen unten.</translation>
    </message>
    <message>
        <source>Drawing of %1: from behind, from the client&apos;s left, from above</source>
        <translation>Zeichnung von %1: von hinten, von der linken Kopfseite, von oben</translation>
    </message>
    <message>
        <source>%1 (your own)</source>
        <translation>%1 (eigenes)</translation>
    </message>
    <message>
        <source>Good for: %1</source>
        <translation>Gut für: %1</translation>
    </message>
    <message>
        <source>Not for: %1</source>
        <translation>Nicht für: %1</translation>
    </message>
    <message>
        <source>Use on this head</source>
        <translation>Auf diesem Kopf verwenden</translation>
    </message>
    <message>
        <source>Begin a plan with it</source>
        <translation>Einen Plan damit beginnen</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Delete %1</source>
        <translation>%1 löschen</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::PreferencesPage</name>
    <message>
        <source>Preferences</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Darstellung</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Paper and graphite</source>
        <translation>Papier und Graphit</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>For the salon floor</source>
        <translation>Für den Salon</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Wie das System</translation>
    </message>
    <message>
        <source>Light or dark as the desktop asks</source>
        <translation>Hell oder dunkel, wie die Arbeitsfläche es will</translation>
    </message>
    <message>
        <source>Hair is judged on paper or on mid grey, in a dark window always on mid grey; everything printed is light.</source>
        <translation>Haar wird auf Papier oder mittlerem Grau beurteilt, in einem dunklen Fenster immer auf mittlerem Grau; alles Gedruckte ist hell.</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>English where the system&apos;s language is not known here</source>
        <translation>Englisch, wo die Sprache des Systems hier nicht bekannt ist</translation>
    </message>
    <message>
        <source>Another language is spoken when the program is started again. Plans and the command line stay as they are.</source>
        <translation>Eine andere Sprache gilt, wenn das Programm neu gestartet wird. Pläne und die Kommandozeile bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Textgröße</translation>
    </message>
    <message>
        <source>Titles follow in the next window you open.</source>
        <translation>Titel folgen im nächsten Fenster, das Sie öffnen.</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Millimetres</source>
        <translation>Millimeter</translation>
    </message>
    <message>
        <source>8 mm</source>
        <translation>8 mm</translation>
    </message>
    <message>
        <source>Centimetres</source>
        <translation>Zentimeter</translation>
    </message>
    <message>
        <source>0.8 cm</source>
        <translation>0,8 cm</translation>
    </message>
    <message>
        <source>Inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>In fractions: 5/16 in</source>
        <translation>In Brüchen: 5/16 in</translation>
    </message>
    <message>
        <source>The program begins with</source>
        <translation>Das Programm beginnt mit</translation>
    </message>
    <message>
        <source>What was open</source>
        <translation>Was offen war</translation>
    </message>
    <message>
        <source>The plans and windows of the last time</source>
        <translation>Die Pläne und Fenster vom letzten Mal</translation>
    </message>
    <message>
        <source>The start page</source>
        <translation>Die Startseite</translation>
    </message>
    <message>
        <source>Recent plans, examples and unsaved work</source>
        <translation>Letzte Pläne, Beispiele und ungespeicherte Arbeit</translation>
    </message>
    <message>
        <source>Unsaved work is offered either way.</source>
        <translation>Ungespeicherte Arbeit wird in jedem Fall angeboten.</translation>
    </message>
    <message>
        <source>A new piece begins with</source>
        <translation>Eine neue Strähne beginnt mit</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Starts off the scalp</source>
        <translation>Beginnt über der Kopfhaut</translation>
    </message>
    <message>
        <source>Pieces that are there already stay as they are. What a piece lifts to is a stand-in (level 9, 8 to 10) until you type it.</source>
        <translation>Vorhandene Strähnen bleiben, wie sie sind. Worauf eine Strähne aufhellt, ist ein Platzhalter (Tonhöhe 9, 8 bis 10), bis Sie es eintragen.</translation>
    </message>
    <message>
        <source>Hints</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>Show hints at first use</source>
        <translation>Hinweise beim ersten Gebrauch zeigen</translation>
    </message>
    <message>
        <source>Show put-away hints again</source>
        <translation>Weggelegte Hinweise wieder zeigen</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Change the keys of commands…</source>
        <translation>Die Tasten der Befehle ändern…</translation>
    </message>
    <message>
        <source>Clients: your own policy</source>
        <translation>Kundenakten: Ihre eigenen Regeln</translation>
    </message>
    <message>
        <source>months</source>
        <translation>Monate</translation>
    </message>
    <message>
        <source>not decided</source>
        <translation>nicht entschieden</translation>
    </message>
    <message>
        <source>Client data is kept for</source>
        <translation>Kundendaten werden aufbewahrt</translation>
    </message>
    <message>
        <source>What is older is listed for you to decide; nothing is deleted by itself</source>
        <translation>Älteres wird für Ihre Entscheidung aufgelistet; nichts wird von selbst gelöscht</translation>
    </message>
    <message>
        <source>%1 counts for</source>
        <translation>%1 gilt</translation>
    </message>
    <message>
        <source>As label, insurer or your own rule asks; then it is due again</source>
        <translation>Wie Etikett, Versicherung oder Ihre eigene Regel es verlangt; dann ist er wieder fällig</translation>
    </message>
    <message>
        <source>Nothing is preset: the maker&apos;s directions, local rules and your insurer come first.</source>
        <translation>Nichts ist voreingestellt: Die Angaben des Herstellers, örtliche Vorschriften und Ihre Versicherung gehen vor.</translation>
    </message>
    <message>
        <source>Price: your own rates</source>
        <translation>Preis: Ihre eigenen Sätze</translation>
    </message>
    <message>
        <source>not typed</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>For an hour of work</source>
        <translation>Für eine Stunde Arbeit</translation>
    </message>
    <message>
        <source>Minutes of the work list are reckoned with it</source>
        <translation>Die Minuten der Arbeitsliste werden damit gerechnet</translation>
    </message>
    <message>
        <source>For a gram of mixture</source>
        <translation>Für ein Gramm Mischung</translation>
    </message>
    <message>
        <source>Grams of all bowls are reckoned with it</source>
        <translation>Die Gramm aller Schalen werden damit gerechnet</translation>
    </message>
    <message>
        <source>Word for the currency</source>
        <translation>Wort für die Währung</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keines</translation>
    </message>
    <message>
        <source>Stands behind the sum, as you write it</source>
        <translation>Steht hinter der Summe, wie Sie es schreiben</translation>
    </message>
    <message>
        <source>The work list shows what its minutes and grams come to. What a choice is offered for on the consultation card stays as you type it there.</source>
        <translation>Die Arbeitsliste zeigt, was ihre Minuten und Gramm ergeben. Wofür eine Variante auf der Beratungskarte angeboten wird, bleibt, wie Sie es dort eintragen.</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::ProposalView</name>
    <message>
        <source>too little hair</source>
        <translation>zu wenig Haar</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>not seen</source>
        <translation>nicht zu sehen</translation>
    </message>
    <message>
        <source>Placing takes as long as before.</source>
        <translation>Das Legen dauert so lange wie zuvor.</translation>
    </message>
    <message>
        <source>Saves about %1 min of placing.</source>
        <translation>Spart etwa %1 min beim Legen.</translation>
    </message>
    <message>
        <source>Takes about %1 min more to place.</source>
        <translation>Braucht etwa %1 min mehr zum Legen.</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Vorher und nachher</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>Aim</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Whole head</source>
        <translation>Ganzer Kopf</translation>
    </message>
    <message>
        <source>Off the levels now</source>
        <translation>Neben den jetzigen Tonhöhen</translation>
    </message>
    <message>
        <source>Off the aims</source>
        <translation>Neben den Zielen</translation>
    </message>
    <message>
        <source> levels</source>
        <translation> Tonhöhen</translation>
    </message>
    <message>
        <source>Largest light block</source>
        <translation>Größter heller Block</translation>
    </message>
    <message>
        <source> cm²</source>
        <translation> cm²</translation>
    </message>
    <message>
        <source>Largest dark block</source>
        <translation>Größter dunkler Block</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Strähnen</translation>
    </message>
    <message>
        <source>Foils</source>
        <translation>Folien</translation>
    </message>
    <message>
        <source>To place</source>
        <translation>Zu legen</translation>
    </message>
    <message>
        <source> min</source>
        <translation> min</translation>
    </message>
    <message>
        <source>Levels: worn down. Blocks: the largest at any opening. Minutes: placing only, by the assumptions.</source>
        <translation>Tonhöhen: offen getragen. Blöcke: der größte an irgendeiner Öffnung. Minuten: nur das Legen, nach den Annahmen.</translation>
    </message>
    <message>
        <source>First figures, from few locks of hair. Try it to see all of it.</source>
        <translation>Erste Zahlen, aus wenigen Haarbüscheln. Versuchen, um alles zu sehen.</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::ReadingTile</name>
    <message>
        <source>L* %1</source>
        <translation>L* %1</translation>
    </message>
    <message>
        <source>%1 % light</source>
        <translation>%1 % hell</translation>
    </message>
    <message>
        <source>contrast:
%1</source>
        <translation>Kontrast:
%1</translation>
    </message>
    <message>
        <source>…</source>
        <translation>…</translation>
    </message>
    <message>
        <source>%1: being worked out</source>
        <translation>%1: wird berechnet</translation>
    </message>
    <message>
        <source>%1: %2 of hair seen, sampling error %3 L*.</source>
        <translation>%1: %2 des Haars zu sehen, Stichprobenfehler %3 L*.</translation>
    </message>
    <message>
        <source>%1 cm²</source>
        <translation>%1 cm²</translation>
    </message>
    <message>
        <source>The range comes from the assumptions, one at a time.</source>
        <translation>Die Spanne kommt aus den Annahmen, jede für sich.</translation>
    </message>
    <message>
        <source>Range not yet known.</source>
        <translation>Spanne noch nicht bekannt.</translation>
    </message>
    <message>
        <source>Press to see how it came about.</source>
        <translation>Drücken, um zu sehen, wie er entstand.</translation>
    </message>
    <message>
        <source>not seen</source>
        <translation>nicht zu sehen</translation>
    </message>
    <message>
        <source>%1: too little of it is seen this way</source>
        <translation>%1: So ist zu wenig davon zu sehen</translation>
    </message>
    <message>
        <source>of the plan before the last change</source>
        <translation>vom Plan vor der letzten Änderung</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::ReadingsStrip</name>
    <message>
        <source>Readings</source>
        <translation>Werte</translation>
    </message>
    <message>
        <source>Press to see how it came about</source>
        <translation>Drücken, um zu sehen, wie er entstand</translation>
    </message>
    <message>
        <source>What these readings rest on where nobody measured this head</source>
        <translation>Worauf diese Werte beruhen, wo niemand diesen Kopf gemessen hat</translation>
    </message>
    <message>
        <source>A picture of the plan, not a promise; a test strand shows how far this hair lightens.</source>
        <translation>Ein Bild des Plans, kein Versprechen; eine Probesträhne zeigt, wie weit dieses Haar aufhellt.</translation>
    </message>
    <message>
        <source>Readings of each region</source>
        <translation>Werte jeder Partie</translation>
    </message>
    <message>
        <source>whole head</source>
        <translation>ganzer Kopf</translation>
    </message>
    <message>
        <source>Unfold the readings</source>
        <translation>Die Werte ausklappen</translation>
    </message>
    <message>
        <source>Fold the readings to one line</source>
        <translation>Die Werte auf eine Zeile einklappen</translation>
    </message>
    <message>
        <source>Assumptions</source>
        <translation>Annahmen</translation>
    </message>
    <message>
        <source>◆ 1 assumption changed</source>
        <translation>◆ 1 Annahme geändert</translation>
    </message>
    <message>
        <source>◆ %1 assumptions changed</source>
        <translation>◆ %1 Annahmen geändert</translation>
    </message>
    <message>
        <source>Assumptions, none changed</source>
        <translation>Annahmen, keine geändert</translation>
    </message>
    <message>
        <source>Readings ◔</source>
        <translation>Werte ◔</translation>
    </message>
    <message>
        <source>Readings ◔ first estimate, being refined</source>
        <translation>Werte ◔ erste Schätzung, wird verfeinert</translation>
    </message>
    <message>
        <source>Readings ⚠</source>
        <translation>Werte ⚠</translation>
    </message>
    <message>
        <source>Readings of the last plan that could be worked out</source>
        <translation>Werte des letzten Plans, der sich berechnen ließ</translation>
    </message>
    <message>
        <source>Readings ▨</source>
        <translation>Werte ▨</translation>
    </message>
    <message>
        <source>Readings ▨ of the plan before the last change, being worked out</source>
        <translation>Werte ▨ vom Plan vor der letzten Änderung, wird berechnet</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::StartPage</name>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Draw where light goes and where depth stays, and see a picture of what that placement aims at. A picture of the plan, not a promise; a test strand shows how far this hair lightens. The maker&apos;s directions come first.</source>
        <translation>Zeichnen, wohin das Helle kommt und wo Tiefe bleibt, und ein Bild dessen sehen, was diese Platzierung anstrebt. Ein Bild des Plans, kein Versprechen; eine Probesträhne zeigt, wie weit dieses Haar aufhellt. Die Angaben des Herstellers gehen vor.</translation>
    </message>
    <message>
        <source>New plan</source>
        <translation>Neuer Plan</translation>
    </message>
    <message>
        <source>Open a plan…</source>
        <translation>Einen Plan öffnen…</translation>
    </message>
    <message>
        <source>or drop a plan file onto this window</source>
        <translation>oder eine Plandatei auf dieses Fenster ziehen</translation>
    </message>
    <message>
        <source>Recent plans</source>
        <translation>Letzte Pläne</translation>
    </message>
    <message>
        <source>Plans you open or save will stand here.</source>
        <translation>Hier stehen Pläne, die Sie öffnen oder speichern.</translation>
    </message>
    <message>
        <source>Examples</source>
        <translation>Beispiele</translation>
    </message>
    <message>
        <source>The examples were not found beside the program.</source>
        <translation>Die Beispiele wurden beim Programm nicht gefunden.</translation>
    </message>
    <message>
        <source>Begin with a pattern</source>
        <translation>Mit einem Muster beginnen</translation>
    </message>
    <message>
        <source>No pattern could be read.</source>
        <translation>Kein Muster war lesbar.</translation>
    </message>
    <message>
        <source>See their drawings…</source>
        <translation>Ihre Zeichnungen sehen…</translation>
    </message>
    <message>
        <source>%1    (file is gone; Delete takes it off)</source>
        <translation>%1    (Datei ist weg; Entf nimmt sie heraus)</translation>
    </message>
    <message>
        <source>Good for: %1
Not for: %2</source>
        <translation>Gut für: %1
Nicht für: %2</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::SuggestionCard</name>
    <message>
        <source>1 piece or pair may change.</source>
        <translation>1 Strähne oder 1 Paar darf sich ändern.</translation>
    </message>
    <message>
        <source>%1 pieces or pairs may change.</source>
        <translation>%1 Strähnen oder Paare dürfen sich ändern.</translation>
    </message>
    <message>
        <source>Suggest a placement</source>
        <translation>Eine Platzierung vorschlagen</translation>
    </message>
    <message>
        <source>Placement only; it says nothing of strength, time or mixture. Look, check, test a strand.</source>
        <translation>Nur die Platzierung; zu Stärke, Zeit oder Mischung sagt es nichts. Ansehen, prüfen, an einer Probesträhne testen.</translation>
    </message>
    <message>
        <source>What is wanted</source>
        <translation>Was gewünscht ist</translation>
    </message>
    <message>
        <source>Set aims…</source>
        <translation>Ziele setzen…</translation>
    </message>
    <message>
        <source>Say which level and contrast is wanted, for the whole head or a region</source>
        <translation>Sagen, welche Tonhöhe und welcher Kontrast gewünscht ist, für den ganzen Kopf oder eine Partie</translation>
    </message>
    <message>
        <source>What may change</source>
        <translation>Was sich ändern darf</translation>
    </message>
    <message>
        <source>Which pieces may change</source>
        <translation>Welche Strähnen sich ändern dürfen</translation>
    </message>
    <message>
        <source>All pieces that are not held</source>
        <translation>Alle nicht festgehaltenen Strähnen</translation>
    </message>
    <message>
        <source>Selected pieces only</source>
        <translation>Nur gewählte Strähnen</translation>
    </message>
    <message>
        <source>A piece that is held, and a pair with a held side, is left alone</source>
        <translation>Eine festgehaltene Strähne und ein Paar mit einer festgehaltenen Seite bleiben unberührt</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Search; this takes some seconds, and you can go on working</source>
        <translation>Suchen; das dauert einige Sekunden, und Sie können weiterarbeiten</translation>
    </message>
    <message>
        <source>Start the search</source>
        <translation>Die Suche beginnen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>End the search; the plan stays as it is (Escape)</source>
        <translation>Die Suche beenden; der Plan bleibt, wie er ist (Escape)</translation>
    </message>
    <message>
        <source>Cancel the search</source>
        <translation>Die Suche abbrechen</translation>
    </message>
    <message>
        <source>How far the search is</source>
        <translation>Wie weit die Suche ist</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was sich fand</translation>
    </message>
    <message>
        <source>Proposal %1</source>
        <translation>Vorschlag %1</translation>
    </message>
    <message>
        <source>Nearest to the aims</source>
        <translation>Den Zielen am nächsten</translation>
    </message>
    <message>
        <source>Another way</source>
        <translation>Ein anderer Weg</translation>
    </message>
    <message>
        <source>Proposal</source>
        <translation>Vorschlag</translation>
    </message>
    <message>
        <source>The sheet and the readings show it. Nothing is changed until you keep it.</source>
        <translation>Kopfblatt und Werte zeigen es. Nichts wird geändert, bis Sie es behalten.</translation>
    </message>
    <message>
        <source>Try</source>
        <translation>Versuchen</translation>
    </message>
    <message>
        <source>Shows the plan with this proposal; nothing is changed until you keep it</source>
        <translation>Zeigt den Plan mit diesem Vorschlag; nichts wird geändert, bis Sie ihn behalten</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Make it part of the plan; undo takes it back</source>
        <translation>In den Plan übernehmen; Rückgängig nimmt es zurück</translation>
    </message>
    <message>
        <source>Drop it</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>The plan stays as it was (Escape)</source>
        <translation>Der Plan bleibt, wie er war (Escape)</translation>
    </message>
    <message>
        <source>There is no piece in this choice yet: draw or lay out some first.</source>
        <translation>In dieser Variante ist noch keine Strähne: zuerst einige zeichnen oder auslegen.</translation>
    </message>
    <message>
        <source>Select pieces on the sheet first.</source>
        <translation>Zuerst Strähnen auf dem Kopfblatt wählen.</translation>
    </message>
    <message>
        <source>Nothing may change: these pieces are held, or do not lighten.</source>
        <translation>Nichts darf sich ändern: Diese Strähnen sind festgehalten oder hellen nicht auf.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>No aim is set. The levels are kept as they look now, with smaller blocks where the hair opens and fewer minutes.</source>
        <translation>Kein Ziel ist gesetzt. Die Tonhöhen bleiben, wie sie jetzt aussehen, mit kleineren Blöcken, wo das Haar sich öffnet, und weniger Minuten.</translation>
    </message>
    <message>
        <source>Change aims…</source>
        <translation>Ziele ändern…</translation>
    </message>
    <message>
        <source>Nothing better was found: as drawn it stands as near as thickness, share, start and backcomb can bring it. Other aims, more pieces that may change, or a piece elsewhere may help.</source>
        <translation>Nichts Besseres fand sich: Wie gezeichnet liegt es so nah, wie Dicke, Anteil, Beginn und Toupieren es bringen können. Andere Ziele, mehr Strähnen, die sich ändern dürfen, oder eine Strähne anderswo helfen vielleicht.</translation>
    </message>
    <message>
        <source>Cancelled before anything was found.</source>
        <translation>Abgebrochen, bevor sich etwas fand.</translation>
    </message>
    <message>
        <source>Cancelled. Below stands what was found until then.</source>
        <translation>Abgebrochen. Unten steht, was sich bis dahin fand.</translation>
    </message>
    <message>
        <source>The search could not go on: %1</source>
        <translation>Die Suche konnte nicht weitergehen: %1</translation>
    </message>
    <message>
        <source>Use suggestion: %1</source>
        <translation>Vorschlag verwenden: %1</translation>
    </message>
    <message>
        <source>The search before is ending…</source>
        <translation>Die vorige Suche endet gerade…</translation>
    </message>
    <message>
        <source>Searching…</source>
        <translation>Sucht…</translation>
    </message>
    <message>
        <source>Searching on; this was found so far.</source>
        <translation>Sucht weiter; dies fand sich bisher.</translation>
    </message>
    <message>
        <source>Kept. Undo takes it back.</source>
        <translation>Behalten. Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>These are of the plan before the last change. Undo it, or start again.</source>
        <translation>Diese sind vom Plan vor der letzten Änderung. Sie zurücknehmen oder neu beginnen.</translation>
    </message>
</context>
<context>
    <name>combdraft::desk::WornBar</name>
    <message>
        <source>Down</source>
        <translation>Offen</translation>
    </message>
    <message>
        <source>Half up</source>
        <translation>Halb hochgesteckt</translation>
    </message>
    <message>
        <source>Tied back</source>
        <translation>Zurückgebunden</translation>
    </message>
    <message>
        <source>Crown opened</source>
        <translation>Wirbel geöffnet</translation>
    </message>
    <message>
        <source>In the wind</source>
        <translation>Im Wind</translation>
    </message>
    <message>
        <source>Layer raised</source>
        <translation>Lage angehoben</translation>
    </message>
    <message>
        <source>All hair hangs down</source>
        <translation>Alles Haar hängt herab</translation>
    </message>
    <message>
        <source>The upper hair is tied, the rest hangs</source>
        <translation>Das obere Haar ist gebunden, der Rest hängt</translation>
    </message>
    <message>
        <source>All hair is tied back</source>
        <translation>Alles Haar ist zurückgebunden</translation>
    </message>
    <message>
        <source>The hand spreads the hair at the swirl</source>
        <translation>Die Hand spreizt das Haar am Wirbel</translation>
    </message>
    <message>
        <source>Wind opens the hair at the swirl</source>
        <translation>Wind öffnet das Haar am Wirbel</translation>
    </message>
    <message>
        <source>The hand holds the upper hair up, to see underneath</source>
        <translation>Die Hand hält das obere Haar hoch, um darunter zu sehen</translation>
    </message>
    <message>
        <source>daylight</source>
        <translation>Tageslicht</translation>
    </message>
    <message>
        <source>overcast</source>
        <translation>bedeckter Himmel</translation>
    </message>
    <message>
        <source>warm lamp</source>
        <translation>warme Lampe</translation>
    </message>
    <message>
        <source>cool office light</source>
        <translation>kühles Bürolicht</translation>
    </message>
    <message>
        <source>old light bulb</source>
        <translation>alte Glühlampe</translation>
    </message>
    <message>
        <source>Part: usual place</source>
        <translation>Scheitel: üblicher Platz</translation>
    </message>
    <message>
        <source>Part: %1 mm to client&apos;s right</source>
        <translation>Scheitel: %1 mm zur rechten Kopfseite</translation>
    </message>
    <message>
        <source>Part: %1 mm to client&apos;s left</source>
        <translation>Scheitel: %1 mm zur linken Kopfseite</translation>
    </message>
    <message>
        <source>Part: none, all is tied back</source>
        <translation>Scheitel: keiner, alles ist zurückgebunden</translation>
    </message>
    <message>
        <source>Part: none, the top is tied</source>
        <translation>Scheitel: keiner, oben ist gebunden</translation>
    </message>
    <message>
        <source>Raised from %1 mm below the top</source>
        <translation>Angehoben ab %1 mm unter dem höchsten Punkt</translation>
    </message>
    <message>
        <source>When: on the day</source>
        <translation>Wann: am Tag selbst</translation>
    </message>
    <message>
        <source>When: 1 week later</source>
        <translation>Wann: 1 Woche später</translation>
    </message>
    <message>
        <source>When: %1 weeks later</source>
        <translation>Wann: %1 Wochen später</translation>
    </message>
    <message>
        <source>How it&apos;s worn, when, in which light</source>
        <translation>Wie es getragen wird, wann, in welchem Licht</translation>
    </message>
    <message>
        <source>How it&apos;s worn</source>
        <translation>Wie es getragen wird</translation>
    </message>
    <message>
        <source>Raised from, mm below the top of the head</source>
        <translation>Angehoben ab, mm unter dem höchsten Punkt des Kopfs</translation>
    </message>
    <message>
        <source>Where the level parting lies; the hair above it is held up</source>
        <translation>Wo die waagerechte Abteillinie liegt; das Haar darüber wird hochgehalten</translation>
    </message>
    <message>
        <source>Part moved</source>
        <translation>Scheitel verschoben</translation>
    </message>
    <message>
        <source>Wear the part farther to one side</source>
        <translation>Den Scheitel weiter auf einer Seite tragen</translation>
    </message>
    <message>
        <source>Hair</source>
        <translation>Haar</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>The hair as it came in</source>
        <translation>Das Haar, wie es heute ist</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>The hair as planned</source>
        <translation>Das Haar wie geplant</translation>
    </message>
    <message>
        <source>If it lifts</source>
        <translation>Wenn es aufhellt</translation>
    </message>
    <message>
        <source>Less</source>
        <translation>Weniger</translation>
    </message>
    <message>
        <source>The look if the hair lightens only to the low end of the span in the plan</source>
        <translation>Der Look, wenn das Haar nur bis zum unteren Ende der Spanne im Plan aufhellt</translation>
    </message>
    <message>
        <source>As planned</source>
        <translation>Wie geplant</translation>
    </message>
    <message>
        <source>The look at the level in the plan; test a strand to know it</source>
        <translation>Der Look bei der Tonhöhe im Plan; nur eine Probesträhne zeigt es</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>The look if the hair lightens to the high end of the span in the plan</source>
        <translation>Der Look, wenn das Haar bis zum oberen Ende der Spanne im Plan aufhellt</translation>
    </message>
    <message>
        <source>Toner</source>
        <translation>Toner</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>Bare, before toner</source>
        <translation>Noch ohne Toner</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>After toner, as typed</source>
        <translation>Nach dem Toner, wie eingetragen</translation>
    </message>
    <message>
        <source>Weeks later</source>
        <translation>Wochen später</translation>
    </message>
    <message>
        <source>How it looks when it has grown</source>
        <translation>Wie es aussieht, wenn es gewachsen ist</translation>
    </message>
    <message>
        <source>Wet or dry</source>
        <translation>Nass oder trocken</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Trocken</translation>
    </message>
    <message>
        <source>The hair dry</source>
        <translation>Das Haar trocken</translation>
    </message>
    <message>
        <source>Wet</source>
        <translation>Nass</translation>
    </message>
    <message>
        <source>The hair wet: darker than it dries</source>
        <translation>Das Haar nass: dunkler, als es trocknet</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <source>The light the hair is looked at in</source>
        <translation>Das Licht, in dem das Haar angesehen wird</translation>
    </message>
    <message>
        <source>Seen from</source>
        <translation>Gesehen aus</translation>
    </message>
    <message>
        <source>How far away the hair is looked at; from farther off, fine light and dark run together</source>
        <translation>Aus welcher Entfernung das Haar angesehen wird; von weiter weg laufen feines Hell und Dunkel ineinander</translation>
    </message>
</context>
<context>
    <name>combdraft::handout::ComposerPage</name>
    <message>
        <source>On paper</source>
        <translation>Auf Papier</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Speichern unter…</translation>
    </message>
    <message>
        <source>PDF with real text; SVG or PNG give a file for each page</source>
        <translation>PDF mit echtem Text; SVG oder PNG geben eine Datei für jede Seite</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Choose a printer; print at 100 % so that scales are true</source>
        <translation>Einen Drucker wählen; mit 100 % drucken, damit Maßstäbe stimmen</translation>
    </message>
    <message>
        <source>Print preview…</source>
        <translation>Druckvorschau…</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Back to where you were (Escape)</source>
        <translation>Zurück zur vorigen Ansicht (Escape)</translation>
    </message>
    <message>
        <source>What is printed</source>
        <translation>Was gedruckt wird</translation>
    </message>
    <message>
        <source>Handout</source>
        <translation>Handzettel</translation>
    </message>
    <message>
        <source>The lesson: what a class works from</source>
        <translation>Die Lektion: wonach eine Klasse arbeitet</translation>
    </message>
    <message>
        <source>Record card</source>
        <translation>Karteikarte</translation>
    </message>
    <message>
        <source>Everything that is needed to do it again</source>
        <translation>Alles, was nötig ist, um es noch einmal zu machen</translation>
    </message>
    <message>
        <source>Client&apos;s page</source>
        <translation>Kundenblatt</translation>
    </message>
    <message>
        <source>The picture, what the plan shows, how to look after it</source>
        <translation>Das Bild, was der Plan zeigt, Pflege danach</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>210 by 297 mm</source>
        <translation>210 mal 297 mm</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>8.5 by 11 inches</source>
        <translation>8,5 mal 11 Zoll</translation>
    </message>
    <message>
        <source>How the paper lies</source>
        <translation>Wie das Papier liegt</translation>
    </message>
    <message>
        <source>Upright</source>
        <translation>Hochkant</translation>
    </message>
    <message>
        <source>Taller than wide</source>
        <translation>Höher als breit</translation>
    </message>
    <message>
        <source>Across</source>
        <translation>Quer</translation>
    </message>
    <message>
        <source>Wider than tall</source>
        <translation>Breiter als hoch</translation>
    </message>
    <message>
        <source>How far the pages are</source>
        <translation>Wie weit die Seiten sind</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Give it up; nothing half-written is left</source>
        <translation>Aufgeben; nichts halb Geschriebenes bleibt</translation>
    </message>
    <message>
        <source>Parts in their order on paper. Tick what is printed; drag a part, or move it with Alt and the arrow keys.</source>
        <translation>Teile in ihrer Reihenfolge auf Papier. Haken Sie an, was gedruckt wird; einen Teil ziehen oder mit Alt und den Pfeiltasten verschieben.</translation>
    </message>
    <message>
        <source>Parts of the handout</source>
        <translation>Teile des Handzettels</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Nach oben</translation>
    </message>
    <message>
        <source>Earlier on paper (Alt and Up)</source>
        <translation>Früher auf Papier (Alt und Auf)</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Nach unten</translation>
    </message>
    <message>
        <source>Later on paper (Alt and Down)</source>
        <translation>Später auf Papier (Alt und Ab)</translation>
    </message>
    <message>
        <source>Texts of the part</source>
        <translation>Texte des Teils</translation>
    </message>
    <message>
        <source>The card repeats everything in the plan: drawings, hair, sections, pieces in order, formulas, changed assumptions. Names are written in by hand; the plan holds none.</source>
        <translation>Die Karte wiederholt alles im Plan: Zeichnungen, Haar, Abteilungen, Strähnen in ihrer Reihenfolge, Rezepturen, geänderte Annahmen. Namen werden von Hand eingetragen; der Plan enthält keine.</translation>
    </message>
    <message>
        <source>Looking after it, a line each</source>
        <translation>Pflege danach, je eine Zeile</translation>
    </message>
    <message>
        <source>Next visit</source>
        <translation>Nächster Besuch</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>Wen anrufen</translation>
    </message>
    <message>
        <source>Left empty: a line to write on</source>
        <translation>Leer gelassen: eine Zeile zum Schreiben</translation>
    </message>
    <message>
        <source>This part is made from the plan alone.</source>
        <translation>Dieser Teil entsteht allein aus dem Plan.</translation>
    </message>
    <message>
        <source>Aim: what the class will be able to do</source>
        <translation>Ziel: was die Klasse dann können wird</translation>
    </message>
    <message>
        <source>Kit, a line each</source>
        <translation>Ausrüstung, je eine Zeile</translation>
    </message>
    <message>
        <source>Check points, a line each</source>
        <translation>Prüfpunkte, je eine Zeile</translation>
    </message>
    <message>
        <source>Faults, a line each: what is seen, a colon, what to do</source>
        <translation>Fehler, je eine Zeile: was zu sehen ist, ein Doppelpunkt, was zu tun ist</translation>
    </message>
    <message>
        <source>How did it go, a line each</source>
        <translation>Wie lief es, je eine Zeile</translation>
    </message>
    <message>
        <source>Left empty: lines to write on</source>
        <translation>Leer gelassen: Zeilen zum Schreiben</translation>
    </message>
    <message>
        <source>Left empty: made from the plan</source>
        <translation>Leer gelassen: aus dem Plan gemacht</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Change the paper</source>
        <translation>Das Papier ändern</translation>
    </message>
    <message>
        <source>Turn the paper</source>
        <translation>Das Papier drehen</translation>
    </message>
    <message>
        <source>Print “%1”</source>
        <translation>„%1“ drucken</translation>
    </message>
    <message>
        <source>Do not print “%1”</source>
        <translation>„%1“ nicht drucken</translation>
    </message>
    <message>
        <source>Order the parts</source>
        <translation>Die Teile ordnen</translation>
    </message>
    <message>
        <source>Type in “%1”</source>
        <translation>Text in „%1“</translation>
    </message>
    <message>
        <source>1 page</source>
        <translation>1 Seite</translation>
    </message>
    <message>
        <source>%1 pages</source>
        <translation>%1 Seiten</translation>
    </message>
    <message>
        <source>Drawing the hair…</source>
        <translation>Das Haar wird gezeichnet…</translation>
    </message>
    <message>
        <source>The pages went to the printer.</source>
        <translation>Die Seiten gingen an den Drucker.</translation>
    </message>
    <message>
        <source>The pages stand in %1.</source>
        <translation>Die Seiten stehen in %1.</translation>
    </message>
    <message>
        <source>%1 pages stand in %2 to %3.</source>
        <translation>%1 Seiten stehen in %2 bis %3.</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>No steps yet: draw pieces or lay out a section first.</source>
        <translation>Noch keine Schritte: zuerst Strähnen zeichnen oder eine Abteilung auslegen.</translation>
    </message>
    <message>
        <source>Its piece or section is no longer in the plan. The words are kept until you take them out.</source>
        <translation>Die Strähne oder Abteilung ist nicht mehr im Plan. Der Text bleibt, bis Sie ihn herausnehmen.</translation>
    </message>
    <message>
        <source>Type in step “%1”</source>
        <translation>Text in Schritt „%1“</translation>
    </message>
    <message>
        <source>Move “%1” up</source>
        <translation>„%1“ nach oben verschieben</translation>
    </message>
    <message>
        <source>Move “%1” down</source>
        <translation>„%1“ nach unten verschieben</translation>
    </message>
    <message>
        <source>handout</source>
        <translation>Handzettel</translation>
    </message>
    <message>
        <source>record card</source>
        <translation>Karteikarte</translation>
    </message>
    <message>
        <source>client&apos;s page</source>
        <translation>Kundenblatt</translation>
    </message>
    <message>
        <source>Save the pages</source>
        <translation>Die Seiten speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf);;Drawings, a file for each page (*.svg);;Pictures, a file for each page (*.png)</source>
        <translation>PDF (*.pdf);;Zeichnungen, eine Datei für jede Seite (*.svg);;Bilder, eine Datei für jede Seite (*.png)</translation>
    </message>
    <message>
        <source>Untitled plan</source>
        <translation>Plan ohne Titel</translation>
    </message>
    <message>
        <source>Work list</source>
        <translation>Arbeitsliste</translation>
    </message>
    <message>
        <source>Bowls, steps and foils in order, for beside the chair</source>
        <translation>Schalen, Schritte und Folien in ihrer Reihenfolge, für den Platz am Stuhl</translation>
    </message>
    <message>
        <source>The list is printed as it is set on the appointment&apos;s page: order, hands, foil widths, own factors. Minutes on the hair are not in it: what is seen is written in by hand.</source>
        <translation>Die Liste wird gedruckt, wie sie auf der Seite des Termins eingestellt ist: Reihenfolge, Hände, Folienbreiten, eigene Faktoren. Minuten auf dem Haar stehen nicht darin: Was zu sehen ist, wird von Hand eingetragen.</translation>
    </message>
    <message>
        <source>work list</source>
        <translation>Arbeitsliste</translation>
    </message>
    <message>
        <source>Not begun: other pages are being written. Wait until they stand, or stop them first.</source>
        <translation>Nicht begonnen: andere Seiten werden gerade geschrieben. Warten, bis sie stehen, oder sie zuerst anhalten.</translation>
    </message>
    <message>
        <source>The same pages as a print, in a window of their own</source>
        <translation>Dieselben Seiten als Druck, in einem eigenen Fenster</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>first and last file</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 stands there already and would be replaced.</source>
        <translation>%1 steht dort schon und würde ersetzt.</translation>
    </message>
    <message>
        <source>Of the names of these %1 pages %2 stand there already and would be replaced: %3.</source>
        <translation>Von den Namen dieser %1 Seiten stehen %2 dort schon und würden ersetzt: %3.</translation>
    </message>
    <message>
        <source>Replace</source>
        <translation>Ersetzen</translation>
    </message>
    <message>
        <source>Do not save</source>
        <translation>Nicht speichern</translation>
    </message>
    <message>
        <source>The pages were not saved: files of their names stand there already, and the plan or its client was left before you said what is to become of them.</source>
        <translation>Die Seiten wurden nicht gespeichert: Dateien ihres Namens stehen dort schon, und der Plan oder die Kundenakte wurde verlassen, bevor Sie sagten, was mit ihnen geschehen soll.</translation>
    </message>
    <message>
        <source>Stopped after %1 of %2 pages. The printer has these and may print them: take them back there.</source>
        <translation>Nach %1 von %2 Seiten angehalten. Der Drucker hat diese und druckt sie vielleicht: dort zurücknehmen.</translation>
    </message>
    <message>
        <source>Given up. No file was changed and nothing was printed.</source>
        <translation>Aufgegeben. Keine Datei wurde geändert und nichts gedruckt.</translation>
    </message>
    <message>
        <source>Making the pages for paper…</source>
        <translation>Die Seiten für das Papier werden gemacht …</translation>
    </message>
    <message>
        <source>PNG, dots an inch</source>
        <translation>PNG, Punkte je Zoll</translation>
    </message>
    <message>
        <source>How finely pages are drawn when they are saved as PNG</source>
        <translation>Wie fein Seiten gezeichnet werden, wenn sie als PNG gespeichert werden</translation>
    </message>
    <message>
        <source>%1 has a name like those of an older set and would stay beside the new pages.</source>
        <translation>%1 heißt wie die Seiten eines älteren Satzes und bliebe neben den neuen Seiten stehen.</translation>
    </message>
    <message>
        <source>%1 files have names like those of an older set, %2; they would stay beside the new pages.</source>
        <translation>%1 Dateien heißen wie die Seiten eines älteren Satzes, %2; sie blieben neben den neuen Seiten stehen.</translation>
    </message>
    <message>
        <source>Replace, and keep the other files</source>
        <translation>Ersetzen und die anderen Dateien behalten</translation>
    </message>
    <message>
        <source>Save, and keep the other files</source>
        <translation>Speichern und die anderen Dateien behalten</translation>
    </message>
    <message>
        <source>Replace, and put the other files into the trash</source>
        <translation>Ersetzen und die anderen Dateien in den Papierkorb legen</translation>
    </message>
    <message>
        <source>Save, and put the other files into the trash</source>
        <translation>Speichern und die anderen Dateien in den Papierkorb legen</translation>
    </message>
    <message>
        <source>The print preview was not opened: its pages were left or stopped before they were made.</source>
        <translation>Die Druckvorschau wurde nicht geöffnet: Die Seiten wurden verlassen oder angehalten, bevor sie fertig waren.</translation>
    </message>
    <message>
        <source>What you type here is printed on this page but not kept; a PDF that you save does hold it. It is gone when another plan is opened or the window closes.</source>
        <translation>Was Sie hier eingeben, wird auf diese Seite gedruckt, aber nicht aufbewahrt; ein gespeichertes PDF enthält es. Es ist weg, sobald ein anderer Plan geöffnet wird oder das Fenster schließt.</translation>
    </message>
</context>
<context>
    <name>combdraft::handout::PageView</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
</context>
<context>
    <name>combdraft::handout::PagesView</name>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
</context>
<context>
    <name>combdraft::handout::PrintPreview</name>
    <message>
        <source>Print preview: 1 page</source>
        <translation>Druckvorschau: 1 Seite</translation>
    </message>
    <message>
        <source>Print preview: %1 pages</source>
        <translation>Druckvorschau: %1 Seiten</translation>
    </message>
    <message>
        <source>Page width</source>
        <translation>Seitenbreite</translation>
    </message>
    <message>
        <source>As wide as the window</source>
        <translation>So breit wie das Fenster</translation>
    </message>
    <message>
        <source>Whole page</source>
        <translation>Ganze Seite</translation>
    </message>
    <message>
        <source>One page in the window</source>
        <translation>Eine Seite im Fenster</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Größer</translation>
    </message>
    <message>
        <source>Nearer (Ctrl and plus)</source>
        <translation>Näher (Strg und Plus)</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Kleiner</translation>
    </message>
    <message>
        <source>Farther (Ctrl and minus)</source>
        <translation>Weiter weg (Strg und Minus)</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken …</translation>
    </message>
    <message>
        <source>Choose a printer and print these pages</source>
        <translation>Einen Drucker wählen und diese Seiten drucken</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close the preview (Escape)</source>
        <translation>Die Vorschau schließen (Esc)</translation>
    </message>
    <message>
        <source>Pages as they are printed</source>
        <translation>Seiten, wie sie gedruckt werden</translation>
    </message>
</context>
<context>
    <name>combdraft::sheet::HeadSheet</name>
    <message>
        <source>Head sheet</source>
        <translation>Kopfblatt</translation>
    </message>
    <message>
        <source>Six views of the head. Tab walks pieces, sections and notes, arrow keys move them.</source>
        <translation>Sechs Ansichten des Kopfs. Tab geht durch Strähnen, Abteilungen und Notizen, Pfeiltasten verschieben sie.</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Notiz: %1</translation>
    </message>
    <message>
        <source>the first corner: closes the outline</source>
        <translation>die erste Ecke: schließt den Umriss</translation>
    </message>
    <message>
        <source>Text of the note</source>
        <translation>Text der Notiz</translation>
    </message>
    <message>
        <source>Note …</source>
        <translation>Notiz …</translation>
    </message>
    <message>
        <source>%1 selected</source>
        <translation>%1 gewählt</translation>
    </message>
    <message>
        <source>No pieces yet. Draw a section and lay it out, or draw a piece.</source>
        <translation>Noch keine Strähnen. Eine Abteilung zeichnen und auslegen, oder eine Strähne zeichnen.</translation>
    </message>
    <message>
        <source>Click a piece, or draw a frame around several.</source>
        <translation>Eine Strähne anklicken oder einen Rahmen um mehrere ziehen.</translation>
    </message>
    <message>
        <source>That is beside the hair: click inside the hairline.</source>
        <translation>Das ist neben dem Haar: innerhalb der Haarlinie klicken.</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>%1 verschieben</translation>
    </message>
    <message>
        <source>Move %1 items</source>
        <translation>%1 Dinge verschieben</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>Remove %1 items</source>
        <translation>%1 Dinge entfernen</translation>
    </message>
    <message>
        <source>Working out the look …</source>
        <translation>Der Look wird berechnet …</translation>
    </message>
    <message>
        <source>%1 left out</source>
        <translation>%1 ausgelassen</translation>
    </message>
</context>
<context>
    <name>consultation</name>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Henna, metallic or box colour was said: no metal test that was made is written down.</source>
        <translation>Henna, metallhaltige oder Farbe aus der Packung ist genannt: Kein gemachter Metalltest ist notiert.</translation>
    </message>
    <message>
        <source>No test strand is written down: it shows how far this hair lightens.</source>
        <translation>Keine Probesträhne ist notiert: Sie zeigt, wie weit dieses Haar aufhellt.</translation>
    </message>
    <message>
        <source>No skin test is written down: label, local rules and insurer say when one is due.</source>
        <translation>Kein Hautverträglichkeitstest ist notiert: Etikett, örtliche Vorschriften und Versicherung sagen, wann einer fällig ist.</translation>
    </message>
    <message>
        <source>Not of the age that label, local rules or insurer ask for: they come first, for tests too.</source>
        <translation>Nicht in dem Alter, das Etikett, örtliche Vorschriften oder Versicherung verlangen: Sie gehen vor, auch bei Tests.</translation>
    </message>
    <message>
        <source>Has reacted before: do not go on, to a doctor first; label and insurer say what may follow.</source>
        <translation>Hat schon einmal reagiert: nicht weitermachen, zuerst ärztlich abklären lassen; Etikett und Versicherung sagen, was folgen darf.</translation>
    </message>
    <message>
        <source>Something was found on the scalp: do not go on, to a doctor first. What it is, is not for the colourist to say.</source>
        <translation>An der Kopfhaut wurde etwas gefunden: nicht weitermachen, zuerst ärztlich abklären lassen. Was es ist, ist nicht im Salon zu entscheiden.</translation>
    </message>
    <message>
        <source>The age was not asked; label, local rules and insurer set the lowest one.</source>
        <translation>Nach dem Alter wurde nicht gefragt; Etikett, örtliche Vorschriften und Versicherung setzen das niedrigste.</translation>
    </message>
    <message>
        <source>Past reactions were not asked: to colour, to lightener, to a temporary black tattoo; also whether breath was short from powder or colour.</source>
        <translation>Nach früheren Reaktionen wurde nicht gefragt: auf Farbe, auf Blondierung, auf eine aufgemalte schwarze Tätowierung; auch nicht, ob Pulver oder Farbe den Atem genommen hat.</translation>
    </message>
    <message>
        <source>The scalp was not looked at: on broken, sore or irritated skin nothing is put; refer to a doctor.</source>
        <translation>Die Kopfhaut wurde nicht angesehen: Auf verletzte, wunde oder gereizte Haut kommt nichts; ärztlich abklären lassen.</translation>
    </message>
    <message>
        <source>Not all of the hair&apos;s history was asked: dye, henna, metallic colour, box colour.</source>
        <translation>Nicht die ganze Vorgeschichte des Haars wurde erfragt: Farbe, Henna, metallhaltige Farbe, Farbe aus der Packung.</translation>
    </message>
    <message>
        <source>Check: %1</source>
        <translation>Prüfen: %1</translation>
    </message>
    <message>
        <source>Test: %1</source>
        <translation>Testen: %1</translation>
    </message>
    <message>
        <source>Refer: %1</source>
        <translation>Abklären lassen: %1</translation>
    </message>
    <message>
        <source>Ask first, whether or not it is written down: the age that label, rules and insurer ask for; past reactions, also to a temporary black tattoo; the scalp&apos;s condition; what the hair has been through (henna, metallic or box colour, lightening); which tests are due. In doubt do not go on; refer to a doctor.</source>
        <translation>Zuerst fragen, ob notiert oder nicht: das Alter, das Etikett, Vorschriften und Versicherung verlangen; frühere Reaktionen, auch auf eine aufgemalte schwarze Tätowierung; den Zustand der Kopfhaut; was das Haar hinter sich hat (Henna, metallhaltige oder Farbe aus der Packung, Blondierung); welche Tests fällig sind. Im Zweifel nicht weitermachen; ärztlich abklären lassen.</translation>
    </message>
    <message>
        <source>Skin test</source>
        <translation>Hautverträglichkeitstest</translation>
    </message>
    <message>
        <source>Test strand</source>
        <translation>Probesträhne</translation>
    </message>
    <message>
        <source>Elasticity</source>
        <translation>Elastizität</translation>
    </message>
    <message>
        <source>Porosity</source>
        <translation>Porosität</translation>
    </message>
    <message>
        <source>Metal test</source>
        <translation>Metalltest</translation>
    </message>
    <message>
        <source>Another test</source>
        <translation>Ein anderer Test</translation>
    </message>
    <message>
        <source>not made yet</source>
        <translation>noch nicht gemacht</translation>
    </message>
    <message>
        <source>no due date typed, and no policy of yours</source>
        <translation>kein Fälligkeitstag eingetragen und keine eigene Regel von Ihnen</translation>
    </message>
    <message>
        <source>due today</source>
        <translation>heute fällig</translation>
    </message>
    <message>
        <source>overdue since %1</source>
        <translation>überfällig seit %1</translation>
    </message>
    <message>
        <source>not made yet, due %1</source>
        <translation>noch nicht gemacht, fällig am %1</translation>
    </message>
    <message>
        <source>next due %1</source>
        <translation>wieder fällig am %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: not dated</source>
        <translation>%1: ohne Datum</translation>
    </message>
    <message>
        <source>%1: none written down</source>
        <translation>%1: keiner aufgeschrieben</translation>
    </message>
    <message>
        <source>Agreed: choice %1.</source>
        <translation>Vereinbart: Variante %1.</translation>
    </message>
    <message>
        <source>Agreed on %1: choice %2.</source>
        <translation>Vereinbart am %1: Variante %2.</translation>
    </message>
    <message>
        <source>the placement was not kept, so that the plan&apos;s check says nothing of it</source>
        <translation>die Platzierung wurde nicht aufbewahrt, so dass die Prüfung des Plans nichts dazu sagt</translation>
    </message>
    <message>
        <source>1 finding of the plan&apos;s check</source>
        <translation>1 Befund der Planprüfung</translation>
    </message>
    <message>
        <source>%1 findings of the plan&apos;s check</source>
        <translation>%1 Befunde der Planprüfung</translation>
    </message>
    <message>
        <source>tests: none may be written down without consent</source>
        <translation>Tests: ohne Einverständnis darf keiner aufgeschrieben werden</translation>
    </message>
    <message>
        <source>Open then: nothing that the plan&apos;s check or the tests written down show; that says nothing about hair or scalp.</source>
        <translation>Damals offen: nichts, was die Planprüfung oder die aufgeschriebenen Tests zeigen; über Haar und Kopfhaut sagt das nichts.</translation>
    </message>
    <message>
        <source>Open then: %1.</source>
        <translation>Damals offen: %1.</translation>
    </message>
    <message>
        <source>Whether henna, metallic or box colour is on the hair is not known: no metal test that was made is written down.</source>
        <translation>Ob Henna, metallhaltige oder Farbe aus der Packung auf dem Haar ist, ist nicht bekannt: Kein gemachter Metalltest ist notiert.</translation>
    </message>
    <message>
        <source>Does not know of past reactions: ask again; in doubt do not go on, to a doctor first. Label and insurer say what may follow.</source>
        <translation>Weiß nichts von früheren Reaktionen: noch einmal fragen; im Zweifel nicht weitermachen, zuerst ärztlich abklären lassen. Was folgen darf, sagen Etikett und Versicherung.</translation>
    </message>
    <message>
        <source>It is not sure what is on the scalp: look again; in doubt do not go on, to a doctor first.</source>
        <translation>Es ist nicht klar, was auf der Kopfhaut ist: noch einmal ansehen; im Zweifel nicht weitermachen, zuerst ärztlich abklären lassen.</translation>
    </message>
    <message>
        <source>The age is not known: ask again; label, local rules and insurer set the lowest one, for tests too.</source>
        <translation>Das Alter ist nicht bekannt: noch einmal fragen; Etikett, örtliche Vorschriften und Versicherung setzen das niedrigste, auch für Tests.</translation>
    </message>
    <message>
        <source>Not all of the hair&apos;s history is known: ask again, and look at the ends and at old bands.</source>
        <translation>Nicht alles aus der Geschichte des Haars ist bekannt: noch einmal fragen und die Spitzen und alte Farbbänder ansehen.</translation>
    </message>
    <message>
        <source>Visits: %1</source>
        <translation>Besuche: %1</translation>
    </message>
    <message>
        <source>Minutes: %1</source>
        <translation>Minuten: %1</translation>
    </message>
    <message>
        <source>Price: %1</source>
        <translation>Preis: %1</translation>
    </message>
    <message>
        <source>the day was not written down, so that the tests were not looked at</source>
        <translation>der Tag wurde nicht aufgeschrieben, so dass die Tests nicht angesehen wurden</translation>
    </message>
    <message>
        <source>%1 of %2: no result is written down.</source>
        <translation>%1 vom %2: Es ist kein Ergebnis notiert.</translation>
    </message>
    <message>
        <source>%1 of %2, as you wrote it down: “%3”.</source>
        <translation>%1 vom %2, wie Sie es notiert haben: „%3“.</translation>
    </message>
    <message>
        <source>If anything showed, or in doubt: do not go on; refer to a doctor.</source>
        <translation>Hat sich etwas gezeigt oder im Zweifel: nicht weitermachen; ärztlich abklären lassen.</translation>
    </message>
    <message>
        <source>If it was not as it should be, or in doubt: do not go on; see the maker&apos;s directions.</source>
        <translation>War es nicht, wie es sein soll, oder im Zweifel: nicht weitermachen; die Angaben des Herstellers ansehen.</translation>
    </message>
    <message>
        <source>Lightener or developer on metal can get hot and break the hair: before that test, or in doubt, put neither on.</source>
        <translation>Blondierung oder Entwickler auf Metall kann heiß werden und das Haar brechen lassen: vor diesem Test, oder im Zweifel, keines von beiden auftragen.</translation>
    </message>
</context>
<context>
    <name>keys</name>
    <message>
        <source>Escape always drops what is under way. Choose another key.</source>
        <translation>Escape verwirft immer, was gerade läuft. Eine andere Taste wählen.</translation>
    </message>
    <message>
        <source>Tab walks from one thing to the next. Choose another key.</source>
        <translation>Tab geht von einem zum nächsten. Eine andere Taste wählen.</translation>
    </message>
    <message>
        <source>This key is needed while drawing and in fields. Hold Ctrl with it, or choose another.</source>
        <translation>Diese Taste wird beim Zeichnen und in Feldern gebraucht. Strg dazu halten oder eine andere wählen.</translation>
    </message>
    <message>
        <source>The arrow keys move pieces. Hold Ctrl with them, or choose another key.</source>
        <translation>Die Pfeiltasten verschieben Strähnen. Strg dazu halten oder eine andere Taste wählen.</translation>
    </message>
    <message>
        <source>A figure or sign alone is for typing. Hold Ctrl or Alt with it.</source>
        <translation>Eine Ziffer oder ein Zeichen allein ist zum Schreiben da. Strg oder Alt dazu halten.</translation>
    </message>
    <message>
        <source>Alt with a letter opens a menu. Hold Ctrl with it, or choose another key.</source>
        <translation>Alt mit einem Buchstaben öffnet ein Menü. Strg dazu halten oder eine andere Taste wählen.</translation>
    </message>
    <message>
        <source>“%1” is no key.</source>
        <translation>„%1“ ist keine Taste.</translation>
    </message>
    <message>
        <source>No command is called “%1”.</source>
        <translation>Kein Befehl heißt „%1“.</translation>
    </message>
    <message>
        <source>%1 belongs to “%2” and cannot be “%3” too.</source>
        <translation>%1 gehört zu „%2“ und kann nicht auch „%3“ sein.</translation>
    </message>
</context>
<context>
    <name>pieces</name>
    <message>
        <source>piece %1</source>
        <translation>Strähne %1</translation>
    </message>
    <message>
        <source>%1 pieces</source>
        <translation>%1 Strähnen</translation>
    </message>
</context>
<context>
    <name>store</name>
    <message>
        <source>Untitled plan</source>
        <translation>Plan ohne Titel</translation>
    </message>
    <message>
        <source>The list of what was open could not be read and was set aside as %1.</source>
        <translation>Die Liste dessen, was offen war, ließ sich nicht lesen und wurde als %1 beiseitegelegt.</translation>
    </message>
    <message>
        <source>The list of what was open could not be read: %1</source>
        <translation>Die Liste dessen, was offen war, ließ sich nicht lesen: %1</translation>
    </message>
    <message>
        <source>The settings could not be read. %1</source>
        <translation>Die Einstellungen ließen sich nicht lesen. %1</translation>
    </message>
    <message>
        <source>The settings could not be read and were set aside as %1. The program begins with those it came with.</source>
        <translation>Die Einstellungen ließen sich nicht lesen und wurden als %1 beiseitegelegt. Das Programm beginnt mit denen, die es mitbrachte.</translation>
    </message>
    <message>
        <source>The settings cannot be written to %1: what you choose holds until the program ends.</source>
        <translation>Die Einstellungen lassen sich nicht nach %1 schreiben: Was Sie wählen, gilt, bis das Programm endet.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>Skin test</source>
        <translation>Hautverträglichkeitstest</translation>
    </message>
    <message>
        <source>Test strand</source>
        <translation>Probesträhne</translation>
    </message>
    <message>
        <source>Elasticity</source>
        <translation>Elastizität</translation>
    </message>
    <message>
        <source>Porosity</source>
        <translation>Porosität</translation>
    </message>
    <message>
        <source>Metal test</source>
        <translation>Metalltest</translation>
    </message>
    <message>
        <source>Another test</source>
        <translation>Ein anderer Test</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>gewünscht</translation>
    </message>
    <message>
        <source>not wanted</source>
        <translation>nicht gewünscht</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Fragen</translation>
    </message>
    <message>
        <source>Asked on</source>
        <translation>Gefragt am</translation>
    </message>
    <message>
        <source>Of the age that label, rules and insurer ask for</source>
        <translation>In dem Alter, das Etikett, Vorschriften und Versicherung verlangen</translation>
    </message>
    <message>
        <source>Reacted before</source>
        <translation>Hat schon einmal reagiert</translation>
    </message>
    <message>
        <source>Past reactions</source>
        <translation>Frühere Reaktionen</translation>
    </message>
    <message>
        <source>Scalp: something found</source>
        <translation>Kopfhaut: etwas gefunden</translation>
    </message>
    <message>
        <source>Scalp: nothing found</source>
        <translation>Kopfhaut: nichts gefunden</translation>
    </message>
    <message>
        <source>Scalp</source>
        <translation>Kopfhaut</translation>
    </message>
    <message>
        <source>Hair history</source>
        <translation>Vorgeschichte des Haars</translation>
    </message>
    <message>
        <source>Dye</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>Henna</source>
        <translation>Henna</translation>
    </message>
    <message>
        <source>Metallic colour</source>
        <translation>Metallhaltige Farbe</translation>
    </message>
    <message>
        <source>Box colour</source>
        <translation>Farbe aus der Packung</translation>
    </message>
    <message>
        <source>Last lightening</source>
        <translation>Letzte Aufhellung</translation>
    </message>
    <message>
        <source>What else the hair has been through</source>
        <translation>Was das Haar sonst hinter sich hat</translation>
    </message>
    <message>
        <source>Tests</source>
        <translation>Tests</translation>
    </message>
    <message>
        <source>not made yet</source>
        <translation>noch nicht gemacht</translation>
    </message>
    <message>
        <source>  Result</source>
        <translation>  Ergebnis</translation>
    </message>
    <message>
        <source>  Due on</source>
        <translation>  Fällig am</translation>
    </message>
    <message>
        <source>What is kept about you</source>
        <translation>Was über Sie aufbewahrt wird</translation>
    </message>
    <message>
        <source>Begun on</source>
        <translation>Begonnen am</translation>
    </message>
    <message>
        <source>Name or mark</source>
        <translation>Name oder Zeichen</translation>
    </message>
    <message>
        <source>Contact</source>
        <translation>Kontakt</translation>
    </message>
    <message>
        <source>You agreed on</source>
        <translation>Sie waren einverstanden am</translation>
    </message>
    <message>
        <source>to it being kept for</source>
        <translation>damit, dass es aufbewahrt wird für</translation>
    </message>
    <message>
        <source>No consent is written down.</source>
        <translation>Kein Einverständnis ist notiert.</translation>
    </message>
    <message>
        <source>Wishes</source>
        <translation>Wünsche</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Gewünscht</translation>
    </message>
    <message>
        <source>Not wanted</source>
        <translation>Nicht gewünscht</translation>
    </message>
    <message>
        <source>How it is worn</source>
        <translation>Wie es getragen wird</translation>
    </message>
    <message>
        <source>Upkeep</source>
        <translation>Pflegeaufwand</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>Budget</translation>
    </message>
    <message>
        <source>Number of visits</source>
        <translation>Zahl der Besuche</translation>
    </message>
    <message>
        <source>Minutes, price and visits by choice</source>
        <translation>Minuten, Preis und Besuche je Variante</translation>
    </message>
    <message>
        <source>%1: %2; %3; %4</source>
        <translation>%1: %2; %3; %4</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>Besuche</translation>
    </message>
    <message>
        <source>  Words</source>
        <translation>  Text</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>%1: %2, %3 %4</source>
        <translation>%1: %2, %3 %4</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>This client is open in another program. What is kept can be read here, not changed.</source>
        <translation>Diese Kundenakte ist in einem anderen Programm offen. Was aufbewahrt wird, lässt sich hier lesen, nicht ändern.</translation>
    </message>
    <message>
        <source>What is kept of this client cannot be read, and was left as it is. Nothing can be kept here until it can.</source>
        <translation>Diese Kundenakte ist nicht lesbar und blieb, wie sie ist. Bis sie lesbar ist, lässt sich hier nichts aufbewahren.</translation>
    </message>
    <message>
        <source>What was kept of this client is damaged. It was set aside in its folder as %1; its photos are still here.</source>
        <translation>Diese Kundenakte ist beschädigt. Sie wurde in ihrem Ordner als %1 beiseitegelegt; die Fotos sind noch hier.</translation>
    </message>
    <message>
        <source>Your own factors could not be read (%1). They were set aside in the settings as %2; the work list goes by the assumptions until you take new ones over.</source>
        <translation>Ihre eigenen Faktoren ließen sich nicht lesen (%1). Sie wurden in den Einstellungen als %2 beiseitegelegt; die Arbeitsliste geht nach den Annahmen, bis Sie neue übernehmen.</translation>
    </message>
    <message>
        <source>the client does not know</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Scalp: looked at, and not sure</source>
        <translation>Kopfhaut: angesehen, nicht klar</translation>
    </message>
    <message>
        <source>%1 cannot be written: what you chose or taught the program last is gone when it ends, if not before. It needs room on the disk and the permission to write there; then choose it once more.</source>
        <translation>%1 kann nicht geschrieben werden: Was Sie zuletzt gewählt oder dem Programm beigebracht haben, ist weg, wenn es endet, vielleicht früher. Es braucht Platz auf dem Datenträger und die Erlaubnis, dort zu schreiben; danach noch einmal wählen.</translation>
    </message>
</context>
</TS>
