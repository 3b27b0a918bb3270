### Der Plan: was passt, was ein Leser wissen sollte, und die Abhilfen mit ihren Zahlen.

## Messstellen

place-resin = Harz
place-air = Luft
place-pipe = Rohr
warmest-resin = { $at }, Harz
warmest-air = { $at }, Luft
warmest-pipe = { $at }, Rohr

## Was die Ablage bietet

fits-pipe = für { $least } bis { $most } { $unit }; Rohr { $pipe } { $unit }
fits-range = { $least } bis { $most }
fits-shorter = um { $by } kürzer als der Kurzliner
fits-ends = freie Packerenden { $bare }; verlangt { $asked }
fits-batch = { $batch } von höchstens { $most }
fits-works = { $working } bei { $warmest }
fits-spare = { $works }; { $spare } übrig
fits-short = { $works }; { $short } zu wenig

## Abhilfen

out-no_temperature = Auf diesem Datenblatt reicht keine Temperatur.
out-all_cooler = Harz, Luft und Rohr alle bei { $enough } oder kälter: Das ergibt { $gives }.
out-one_cooler = Nur { $place ->
    [resin] das Harz
    [air] die Luft
   *[pipe] das Rohr
  } zu kühlen ergibt { $gives }, weil { $warmest ->
    [resin] das Harz
    [air] die Luft
   *[pipe] das Rohr
  } { $at } hat: noch { $short } zu wenig.
out-split = In { $count } Ansätzen mischen, einer nach dem anderen.
out-longer = Ein Kurzliner von { $needed } oder mehr, mittig auf dem Schaden.
out-centred = Mittig auf dem Schaden überdeckt er { $cover }.
out-marked = Mit der Kamera am Schaden in derselben Fahrt markiert, überdeckt er { $cover }.
out-series = { $count } Kurzliner von { $length } in Reihe, jeder eine eigene Reparatur.
out-less_water = Grundwasser auf { $head } über der Sohle oder weniger abgesenkt.
out-shelf-resin = In der Ablage passt dieses Harz: { $names }.
out-shelf-patch = In der Ablage passt dieser Kurzliner: { $names }.
out-shelf-packer = In der Ablage passt dieser Packer: { $names }.

## Hinweise

note-offset_missing = Wie weit die Rohrmündung von der Mitte von { $node } entfernt ist, ist nicht eingegeben: Die Marke zählt ab der Mitte.
note-diameter_nominal = Der Innendurchmesser ist ein Nennwert, bis er am Schaden gemessen ist.
note-seam_missing = Wohin die Naht kommt, ist nicht ausgewählt.
note-host_pipe_unknown = Niemand hat gesagt, wie viel Druck das Altrohr verträgt: eine Frage für einen zugelassenen Ingenieur.
note-series = Ein Kurzliner ist zu kurz: { $count } in Reihe, noch zu setzen mit ihren Mitten bei { $centres } ab { $node }. Jeder ist eine eigene Reparatur; dies ist die erste davon.
note-lateral_under = Der Kurzliner überdeckt den Anschluss bei { $at }, { $hour } Uhr: nach vollständiger Aushärtung öffnen.
note-lateral_near = Der Anschluss bei { $at } liegt so nah, dass der Kurzliner ihn überdecken kann, wenn sich die Fehler addieren.
note-lateral_bore_unknown = Die Weite des Anschlusses bei { $at } ist nicht bekannt: Er zählt so weit wie das Rohr.
note-packer_out = Der Packer würde bei { $node } { $out } aus dem Rohr ragen. Wo ihn nichts hält, kann er platzen: Vor dem Aufblasen muss er mit seiner ganzen Länge im Rohr liegen. Das Datenblatt des Packers entscheidet.
note-containers = { $count } × { $kit }, bis auf den letzten Tropfen entleert: { $mass }.
note-batches = { $count } Ansätze mit je { $mass }; die Verarbeitungszeit läuft ab dem ersten.
note-clock_same_hour = { $name } reicht von { $hour } bis { $hour } Uhr: rundum oder eine Stelle?
note-closure_ends = { $says } Das gilt, wenn der Mischbeginn jetzt wäre.
