### Le certificat : matériaux, valeurs, constats, photos.

## derive/findings.rs

cert-findings-folds = Plis
cert-findings-edges = Bords
cert-findings-surface = Surface
cert-findings-infiltration = Infiltration
cert-findings-all_back = Tout récupéré
cert-findings-waste = Déchets
cert-findings-flow = Écoulement
cert-findings-outside = HORS LIMITES : { $broken } { $found }
cert-findings-done = fait
cert-findings-limit = ; limite { $limit }
cert-findings-none = aucun{ $limit }
cert-findings-at_oclock = {" "}à { $hour } h
cert-findings-highest = le plus haut { $height }{ $hour }{ $place }{ $limit }
cert-findings-height_not_recorded = hauteur non notée
cert-findings-both_bonded_all_round = les deux adhèrent sur tout le tour
cert-findings-head_above_the_invert_as = ; eau au-dessus du radier { $head }, selon le plan
cert-findings-sample = Échantillon
cert-findings-nobody_felt_one = personne n’en a palpé
cert-findings-from_the_manhole_soft_would = du regard : { $felt } ; mou interdirait de dégonfler, dur seul ne prouve rien
cert-findings-laterals = Branchements
cert-findings-none_2 = aucun
cert-findings-none_under_the_patch = aucun sous la manchette
cert-findings-full_cure = ; durcissement complet { $at }
cert-findings-coupons = ; pastilles : { $why }
cert-findings-coupons_recovered = ; pastilles récupérées : { $count }
cert-findings-covered = { $count ->
    [one] { $count } recouvert
   *[other] { $count } recouverts
  } : { $each }{ $coupons }{ $cure }
cert-findings-at_an_unknown_place = à un endroit inconnu
cert-findings-not_opened = { $station } NON ROUVERT
cert-findings-coupon_not_out = pastille NON sortie
cert-findings-open_to_cut = { $station } ouvert à { $percent } %, fraisé { $at }, { $coupon }
cert-findings-air_or_water_test = Essai à l’air ou à l’eau
cert-findings-tight = étanche
cert-findings-not_tight = NON étanche
cert-findings-by = { $result }, par { $method }{ $values }
cert-findings-a_method_that_nobody_named = une méthode que personne n’a nommée
cert-findings-none_because = aucun, parce que { $because }
cert-findings-none_though_the_contract_asks = aucun, bien que le contrat l’exige
cert-findings-none_not_asked = aucun : non exigé ({ $source })
cert-findings-no_photo = sans photo
cert-findings-photo = photo { $numbers }
cert-findings-photos = photos { $numbers }

## derive/materials.rs

cert-materials-stored = stockée { $range }
cert-materials-storage_not_recorded = stockage non noté
cert-materials-resin_part_a = Résine, composant A
cert-materials-resin_part_b = Résine, composant B
cert-materials-weighed = { $mass } pesés
cert-materials-whole_containers = récipients entiers, { $kit }
cert-materials-whole_containers_2 = récipients entiers
cert-materials-mass_not_recorded = masse non notée
cert-materials-seam_not_recorded = couture non notée
cert-materials-seam_at_oclock = couture à { $hour } h
cert-materials-patch = Manchette
cert-materials-none_stated = aucune indiquée
cert-materials-strapped_down = { $pressure }, sanglé
cert-materials-no_drop = sans chute
cert-materials-drop = chute { $pressure }
cert-materials-in = { $drop } en { $time }
cert-materials-packer = Packer
cert-materials-no = { $name }, n° { $serial }
cert-materials-tested = essayé { $date }
cert-materials-membrane = membrane { $length }
cert-materials-no_membrane = sans membrane
cert-materials-sleeve_membrane = Housse, membrane
cert-materials-sleeve = housse ; { $membrane }
cert-materials-sleeve_2 = housse { $length }
cert-materials-instruments = Instruments
cert-materials-instrument = Instrument
cert-materials-not_in_the_plan = { $id } (absent du plan)
cert-materials-pressure_gauge = Manomètre
cert-materials-thermometer = Thermomètre
cert-materials-camera_counter = Compteur de caméra
cert-materials-scale = Balance
cert-materials-tape = Mètre ruban
cert-materials-gas_meter = Détecteur de gaz
cert-materials-no_calibration_asked = étalonnage non exigé
cert-materials-calibrated_to = étalonné jusqu’au { $date }

## derive/photos.rs

cert-photos-photo_without_a_title = Photo sans titre
cert-photos-attempt = { $title } (tentative { $n })
cert-photos-marked_up_copy_of_photo = copie annotée de la photo { $number }
cert-photos-the_original_is_not_on = l’original n’est pas sur cet appareil
cert-photos-the_file_on_this_device = le fichier de cet appareil n’est pas l’original : son SHA-256 est autre

## derive/sheets.rs

cert-sheets-as_entered_the_program_ships = comme saisi ; le programme n’apporte aucune valeur de procédé
cert-sheets-no_plan_was_accepted = aucun plan n’a été accepté
cert-sheets-coordinates_of_the_node_as = coordonnées du nœud, comme lues
cert-sheets-no_inspection_was_read_in = aucune inspection n’a été lue
cert-sheets-lines = { $date }, lignes { $lines }
cert-sheets-not_kept = non gardées
cert-sheets-from = { $table } dès { $from }
cert-sheets-1_by_mass = { $ratio } : 1 en masse, ± { $tolerance } %
cert-sheets-whole_containers = récipients entiers : { $kit }, { $mass }
cert-sheets-for_up_to = { $table }, jusqu’à { $batch }
cert-sheets-parts_a_and_b = Composants A et B
cert-sheets-mixing = Mélange
cert-sheets-at_least = au moins { $value }
cert-sheets-resin_temperature = Température de résine
cert-sheets-storage = Stockage
cert-sheets-joining = la réunion
cert-sheets-target_pressure = pression de consigne
cert-sheets-at = { $time } à { $temperature }
cert-sheets-least_gauge_least_net = au moins { $gauge } relatifs, { $net } nets
cert-sheets-up_to = { $pressure } jusqu’à { $size }
cert-sheets-not_stated = non indiqué
cert-sheets-for = { $pressure } pendant { $time }
cert-sheets-pressure = Pression
cert-sheets-most_packer = Maximum, packer
cert-sheets-most_patch = Maximum, manchette
cert-sheets-most_host_pipe = Maximum, conduite
cert-sheets-most_contract = Maximum, contrat
cert-sheets-packer_test = Essai du packer
cert-sheets-nobody_has_stated_one = personne n’en a indiqué
cert-sheets-at_least_equal_within = au moins { $least }, égaux à { $tolerance } près
cert-sheets-bare_ends = Bouts libres
cert-sheets-packer_range = Plage du packer
cert-sheets-soaked_patch = Manchette imprégnée
cert-sheets-every_grace = toutes les { $interval }, tolérance { $grace }
cert-sheets-a_longer_gap_is_lost = une lacune plus longue est perdue en entier
cert-sheets-of_a_longer_gap_the = d’une lacune plus longue, l’excédent est perdu
cert-sheets-open_to = ouvert de { $least } à { $most } %
cert-sheets-the_foreman_decides_after_the = le chef de chantier décide après la caméra
cert-sheets-a_new_attempt = une nouvelle tentative
cert-sheets-asked_after_full_cure = exigé après durcissement complet
cert-sheets-not_asked = non exigé
cert-sheets-cover_each_side = Débord par côté
cert-sheets-readings = Relevés
cert-sheets-gap_rule = Règle des lacunes
cert-sheets-fold = Pli
cert-sheets-lateral = Branchement
cert-sheets-doubtful_hold = Maintien douteux
cert-sheets-second_go = Deuxième feu vert
cert-sheets-margin = Marge
cert-sheets-cleaning = Curage
cert-sheets-viewed_again_within = revue dans les { $time }
cert-sheets-temperatures_no_older_than = températures de { $time } au plus
cert-sheets-the_greater_of_of_dn = le plus grand de { $percent } % du DN et { $height }
cert-sheets-of_dn = { $percent } % du DN

## layout/evidence.rs

cert-evidence-item = Objet
cert-evidence-kind_number = Type, numéro
cert-evidence-lot = Lot
cert-evidence-expiry_check = Péremption, contrôle
cert-evidence-amount_range = Quantité, plage
cert-evidence-note = Note
cert-evidence-value = Valeur
cert-evidence-as_entered = Comme saisi
cert-evidence-source = Source
cert-evidence-check = Vérification
cert-evidence-formula_and_source = Formule et source
cert-evidence-inputs = Données
cert-evidence-limit = Limite
cert-evidence-what = Quoi
cert-evidence-found = Constat
cert-evidence-evidence = Preuve
cert-evidence-no = N°
cert-evidence-rule_and_value = Règle et valeur
cert-evidence-reason_who_when = Motif, qui, quand
cert-evidence-what_happened = Ce qui s’est passé
cert-evidence-from_to = De, à
cert-evidence-what_happened_what_became_of = Ce qui s’est passé, sort des matériaux
cert-evidence-where_was_the_patch = Manchette : où ?
cert-evidence-anything_in_the_pipe = Dans la conduite ?
cert-evidence-outcome_by_when = Issue, qui, quand
cert-evidence-old = Ancien
cert-evidence-new = Nouveau
cert-evidence-reason = Motif
cert-evidence-by_when = Qui, quand
cert-evidence-result_against_limit_margin_is = résultat face à la limite ; la marge est ce qui restait
cert-evidence-danger_zone = Zone de danger
cert-evidence-the_two_questions_were_asked = les deux questions ont été posées à la fin du temps d’emploi, les personnes nommées y ont répondu
cert-evidence-nothing_is_overwritten_the_old = rien n’est écrasé : l’ancienne valeur reste

## layout/photos.rs

cert-photos-the_copy_is_not_at = la copie n’est pas disponible
cert-photos-the_copy_is_not_the = la copie n’est pas celle enregistrée : son empreinte diffère
cert-photos-the_copy_cant_be_shown = la copie ne peut être montrée : { $fault }
cert-photos-reduced_copies_the_originals_stay = copies réduites ; les originaux restent à l’entreprise, nommés par leur SHA-256 ; abrégé ici, en entier au dossier
cert-photos-in_bundle = , dans le paquet { $bundle }
cert-photos-this_copy = cette copie { $hash }
cert-photos-no_copy = sans copie
cert-photos-original = original { $hash }{ $bundle }
cert-photos-photo = Photo { $title }
cert-photos-it_was_not_examined = elle n’a pas été examinée
cert-photos-no_picture = Pas d’image : { $why }.

## More

cert-count-layers = { $count ->
    [one] { $count } couche
   *[other] { $count } couches
  }
cert-tables-continued = { $title } (suite)
cert-jpeg-not_jpeg = ce n’est pas un fichier JPEG
cert-jpeg-cut_off = le fichier est tronqué
cert-jpeg-no_size = il n’a pas de taille d’image
cert-jpeg-colour = il est en CMJN ou dans une autre couleur qu’une page ne peut montrer
cert-jpeg-coding = son type de JPEG (codage arithmétique, sans perte ou 12 bits) ne peut être montré
cert-photo_copy-unreadable = l’original n’est pas une image JPEG ou PNG, ou il est endommagé ({ $why })
cert-photo_copy-unwritable = la copie n’a pas pu être écrite ({ $why })
cert-sheets-full_cure = Durcissement complet
