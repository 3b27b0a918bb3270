### Der Nachweis: Material, Werte, Befunde, Fotos.

## derive/findings.rs

cert-findings-folds = Falten
cert-findings-edges = Ränder
cert-findings-surface = Oberfläche
cert-findings-infiltration = Infiltration
cert-findings-all_back = Alles zurück
cert-findings-waste = Abfall
cert-findings-flow = Abfluss
cert-findings-outside = AUSSERHALB: { $broken } { $found }
cert-findings-done = erledigt
cert-findings-limit = ; Grenze { $limit }
cert-findings-none = keine{ $limit }
cert-findings-at_oclock = {" "}bei { $hour } Uhr
cert-findings-highest = höchste { $height }{ $hour }{ $place }{ $limit }
cert-findings-height_not_recorded = Höhe nicht erfasst
cert-findings-both_bonded_all_round = beide haften rundum
cert-findings-head_above_the_invert_as = ; Wasserstand über der Sohle { $head }, wie geplant
cert-findings-sample = Probe
cert-findings-nobody_felt_one = niemand hat eine befühlt
cert-findings-from_the_manhole_soft_would = aus dem Schacht: { $felt }; weich verbietet das Ablassen, hart allein beweist nichts
cert-findings-laterals = Anschlüsse
cert-findings-none_2 = keine
cert-findings-none_under_the_patch = keiner unter dem Kurzliner
cert-findings-full_cure = ; vollständige Aushärtung { $at }
cert-findings-coupons = ; Ausschnitte: { $why }
cert-findings-coupons_recovered = ; Ausschnitte geborgen: { $count }
cert-findings-covered = { $count } überdeckt: { $each }{ $coupons }{ $cure }
cert-findings-at_an_unknown_place = an unbekannter Stelle
cert-findings-not_opened = { $station } NICHT GEÖFFNET
cert-findings-coupon_not_out = Ausschnitt NICHT geborgen
cert-findings-open_to_cut = { $station } zu { $percent } % offen, gefräst { $at }, { $coupon }
cert-findings-air_or_water_test = Luft- oder Wasserprüfung
cert-findings-tight = dicht
cert-findings-not_tight = NICHT dicht
cert-findings-by = { $result }, nach { $method }{ $values }
cert-findings-a_method_that_nobody_named = einem Verfahren, das niemand nannte
cert-findings-none_because = keine, weil { $because }
cert-findings-none_though_the_contract_asks = keine, obwohl der Vertrag sie verlangt
cert-findings-none_not_asked = keine: nicht verlangt ({ $source })
cert-findings-no_photo = kein Foto
cert-findings-photo = Foto { $numbers }
cert-findings-photos = Fotos { $numbers }

## derive/materials.rs

cert-materials-stored = gelagert { $range }
cert-materials-storage_not_recorded = Lagerung nicht erfasst
cert-materials-resin_part_a = Harz Komponente A
cert-materials-resin_part_b = Harz Komponente B
cert-materials-weighed = { $mass } gewogen
cert-materials-whole_containers = ganze Gebinde, { $kit }
cert-materials-whole_containers_2 = ganze Gebinde
cert-materials-mass_not_recorded = Masse nicht erfasst
cert-materials-seam_not_recorded = Naht nicht erfasst
cert-materials-seam_at_oclock = Naht bei { $hour } Uhr
cert-materials-patch = Kurzliner
cert-materials-none_stated = keine angegeben
cert-materials-strapped_down = { $pressure }, festgezurrt
cert-materials-no_drop = kein Abfall
cert-materials-drop = Abfall { $pressure }
cert-materials-in = { $drop } in { $time }
cert-materials-packer = Packer
cert-materials-no = { $name }, Nr. { $serial }
cert-materials-tested = geprüft { $date }
cert-materials-membrane = Membran { $length }
cert-materials-no_membrane = keine Membran
cert-materials-sleeve_membrane = Trennfolie, Membran
cert-materials-sleeve = Trennfolie; { $membrane }
cert-materials-sleeve_2 = Trennfolie { $length }
cert-materials-instruments = Messgeräte
cert-materials-instrument = Messgerät
cert-materials-not_in_the_plan = { $id } (nicht im Plan)
cert-materials-pressure_gauge = Manometer
cert-materials-thermometer = Thermometer
cert-materials-camera_counter = Zählwerk der Kamera
cert-materials-scale = Waage
cert-materials-tape = Maßband
cert-materials-gas_meter = Gaswarngerät
cert-materials-no_calibration_asked = keine Kalibrierung verlangt
cert-materials-calibrated_to = kalibriert bis { $date }

## derive/photos.rs

cert-photos-photo_without_a_title = Foto ohne Titel
cert-photos-attempt = { $title } (Versuch { $n })
cert-photos-marked_up_copy_of_photo = markierte Kopie von Foto { $number }
cert-photos-the_original_is_not_on = das Original ist nicht auf diesem Gerät
cert-photos-the_file_on_this_device = die Datei auf diesem Gerät ist nicht das Original: ihr SHA-256 ist ein anderer

## derive/sheets.rs

cert-sheets-as_entered_the_program_ships = wie eingegeben; das Programm bringt keine eigenen Prozesswerte mit
cert-sheets-no_plan_was_accepted = kein Plan wurde angenommen
cert-sheets-coordinates_of_the_node_as = Koordinaten des Knotens, wie eingelesen
cert-sheets-no_inspection_was_read_in = keine Inspektion wurde eingelesen
cert-sheets-lines = { $date }, Zeilen { $lines }
cert-sheets-not_kept = nicht bewahrt
cert-sheets-from = { $table } ab { $from }
cert-sheets-1_by_mass = { $ratio } : 1 nach Masse, ± { $tolerance } %
cert-sheets-whole_containers = ganze Gebinde: { $kit }, { $mass }
cert-sheets-for_up_to = { $table }, für bis zu { $batch }
cert-sheets-parts_a_and_b = Komponenten A und B
cert-sheets-mixing = Mischen
cert-sheets-at_least = mindestens { $value }
cert-sheets-resin_temperature = Harztemperatur
cert-sheets-storage = Lagerung
cert-sheets-joining = Mischbeginn
cert-sheets-target_pressure = Solldruck
cert-sheets-at = { $time } bei { $temperature }
cert-sheets-least_gauge_least_net = mindestens { $gauge } Überdruck, { $net } netto
cert-sheets-up_to = { $pressure } bis { $size }
cert-sheets-not_stated = nicht angegeben
cert-sheets-for = { $pressure } für { $time }
cert-sheets-pressure = Druck
cert-sheets-most_packer = Höchstens, Packer
cert-sheets-most_patch = Höchstens, Kurzliner
cert-sheets-most_host_pipe = Höchstens, Altrohr
cert-sheets-most_contract = Höchstens, Vertrag
cert-sheets-packer_test = Packerprüfung
cert-sheets-nobody_has_stated_one = niemand hat einen angegeben
cert-sheets-at_least_equal_within = mindestens { $least }, gleich auf { $tolerance }
cert-sheets-bare_ends = Freie Packerenden
cert-sheets-packer_range = Packerbereich
cert-sheets-soaked_patch = Getränkter Kurzliner
cert-sheets-every_grace = alle { $interval }, Nachfrist { $grace }
cert-sheets-a_longer_gap_is_lost = von einer längeren Lücke zählt nichts
cert-sheets-of_a_longer_gap_the = von einer längeren Lücke zählt der Überschuss nicht
cert-sheets-open_to = { $least } bis { $most } % offen
cert-sheets-the_foreman_decides_after_the = der Polier entscheidet nach der Kamera
cert-sheets-a_new_attempt = ein neuer Versuch
cert-sheets-asked_after_full_cure = nach vollständiger Aushärtung verlangt
cert-sheets-not_asked = nicht verlangt
cert-sheets-cover_each_side = Überdeckung je Seite
cert-sheets-readings = Ablesungen
cert-sheets-gap_rule = Lückenregel
cert-sheets-fold = Falte
cert-sheets-lateral = Anschluss
cert-sheets-doubtful_hold = Fragliche Haltezeit
cert-sheets-second_go = Zweite Freigabe
cert-sheets-margin = Reserve
cert-sheets-cleaning = Reinigung
cert-sheets-viewed_again_within = nochmals befahren innerhalb von { $time }
cert-sheets-temperatures_no_older_than = Temperaturen nicht älter als { $time }
cert-sheets-the_greater_of_of_dn = das Größere von { $percent } % der DN und { $height }
cert-sheets-of_dn = { $percent } % der DN

## layout/evidence.rs

cert-evidence-item = Gegenstand
cert-evidence-kind_number = Art, Nummer
cert-evidence-lot = Charge
cert-evidence-expiry_check = Ablauf, Prüfung
cert-evidence-amount_range = Menge, Bereich
cert-evidence-note = Vermerk
cert-evidence-value = Wert
cert-evidence-as_entered = Wie eingegeben
cert-evidence-source = Quelle
cert-evidence-check = Prüfung
cert-evidence-formula_and_source = Formel und Quelle
cert-evidence-inputs = Eingaben
cert-evidence-limit = Grenze
cert-evidence-what = Was
cert-evidence-found = Befund
cert-evidence-evidence = Beleg
cert-evidence-no = Nr.
cert-evidence-rule_and_value = Regel und Wert
cert-evidence-reason_who_when = Grund, wer, wann
cert-evidence-what_happened = Was geschah
cert-evidence-from_to = Von, bis
cert-evidence-what_happened_what_became_of = Was geschah, was wurde aus dem Material
cert-evidence-where_was_the_patch = Wo war der Kurzliner?
cert-evidence-anything_in_the_pipe = Etwas im Rohr?
cert-evidence-outcome_by_when = Ende, wer, wann
cert-evidence-old = Alt
cert-evidence-new = Neu
cert-evidence-reason = Grund
cert-evidence-by_when = Wer, wann
cert-evidence-result_against_limit_margin_is = Ergebnis gegen Grenze; Reserve ist, was übrig war
cert-evidence-danger_zone = Gefahrenbereich
cert-evidence-the_two_questions_were_asked = die zwei Fragen wurden gestellt, als die Verarbeitungszeit ablief, und von den Genannten beantwortet
cert-evidence-nothing_is_overwritten_the_old = nichts wird überschrieben: der alte Wert bleibt

## layout/photos.rs

cert-photos-the_copy_is_not_at = die Kopie ist nicht zur Hand
cert-photos-the_copy_is_not_the = die Kopie ist nicht die erfasste: ihr Hash weicht ab
cert-photos-the_copy_cant_be_shown = die Kopie lässt sich nicht zeigen: { $fault }
cert-photos-reduced_copies_the_originals_stay = verkleinerte Kopien; die Originale bleiben beim Auftragnehmer, benannt nach ihrem SHA-256; hier gekürzt, vollständig im Protokoll
cert-photos-in_bundle = , im Bündel { $bundle }
cert-photos-this_copy = diese Kopie { $hash }
cert-photos-no_copy = keine Kopie
cert-photos-original = Original { $hash }{ $bundle }
cert-photos-photo = Foto { $title }
cert-photos-it_was_not_examined = es wurde nicht untersucht
cert-photos-no_picture = Kein Bild: { $why }.

## More

cert-count-layers = { $count ->
    [one] { $count } Lage
   *[other] { $count } Lagen
  }
cert-tables-continued = { $title } (Forts.)
cert-jpeg-not_jpeg = es ist keine JPEG-Datei
cert-jpeg-cut_off = die Datei ist abgeschnitten
cert-jpeg-no_size = sie hat keine Bildgröße
cert-jpeg-colour = sie ist in CMYK oder in Farben, die eine Seite nicht zeigen kann
cert-jpeg-coding = ihre Art von JPEG (arithmetische Kodierung, verlustfrei oder 12 Bit) lässt sich nicht zeigen
cert-photo_copy-unreadable = das Original ist kein JPEG- oder PNG-Bild, oder es ist beschädigt ({ $why })
cert-photo_copy-unwritable = die Kopie ließ sich nicht schreiben ({ $why })
cert-sheets-full_cure = Vollständige Aushärtung
