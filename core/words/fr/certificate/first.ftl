### Le certificat : la première page et ce que porte chaque page.

## derive/answers.rs

cert-answers-accepted = ACCEPTÉE
cert-answers-rejected = REFUSÉE
cert-answers-rehearsal = EXERCICE
cert-answers-unrepaired = NON RÉPARÉE
cert-answers-by_the_foreman = par le chef de chantier
cert-answers-practice_patch_accepted = manchette d’exercice acceptée
cert-answers-practice_patch_rejected = manchette d’exercice refusée
cert-answers-practice_patch_left_in_the = manchette d’exercice laissée dans la conduite
cert-answers-closed_without_a_practice_patch = clos sans manchette d’exercice
cert-answers-no_sewer_was_repaired = aucun égout n’a été réparé ; { $how }
cert-answers-closed_by_the_foreman_a = close par le chef de chantier, une manchette est restée dans la conduite
cert-answers-a_patch_was_left_in = une manchette est restée dans la conduite, non close
cert-answers-closed_by_the_foreman_without = close par le chef de chantier sans manchette
cert-answers-nothing_waived = Aucune dérogation
cert-answers-off_the_rules = Hors des règles
cert-answers-why_rejected = Pourquoi refusée
cert-answers-why_unrepaired = Pourquoi non réparée
cert-answers-what_this_is = Ce que c’est
cert-answers-practice_it_can_never_become = Exercice. Ne peut jamais devenir un certificat.
cert-answers-the_record_is_marked_as = Le dossier est marqué exercice dès sa première entrée et numéroté à part. { $also }
cert-answers-no_reason_was_written = aucun motif n’a été écrit
cert-answers-of_the_hold_not_witnessed = { $time } du maintien non surveillées
cert-answers-nothing_else_on_the_record = Rien d’autre au dossier
cert-answers-also_on_the_record = Aussi au dossier : { $list }
cert-answers-pipe_without_a_key_of = conduite sans identifiant du maître d’ouvrage
cert-answers-of_unknown_material = en matériau inconnu
cert-answers-what_it_carries_is_not = ce qu’elle transporte n’est pas noté
cert-answers-which_pipe = Quelle conduite
cert-answers-between_node_centres_flows_to = { $pipe }, { $carries }, { $length } entre centres des nœuds, s’écoule vers { $to }
cert-answers-street_not_recorded = Rue non notée
cert-answers-patch_centre = Centre de la manchette
cert-answers-defect_centre = Centre du défaut
cert-answers-from_upstream_from_downstream = { $what } à { $at } de { $upstream } (amont) = { $rest } de { $downstream } (aval)
cert-answers-where = Où
cert-answers-what_was_mended = Ce qui est réparé
cert-answers-what_was_tried = Ce qui a été tenté
cert-answers-what_was_practised = L’exercice
cert-answers-what_is_not_mended = Non réparé
cert-answers-defect = Défaut { $extent }
cert-answers-patch_long_all_round_both = manchette de { $length }, sur tout le tour, { $lies }, le tout depuis { $upstream }
cert-answers-from = depuis { $upstream } ; { $why }
cert-answers-also = aussi { $what }, { $around }, { $at }
cert-answers-looking_downstream = { $around } vu vers l’aval
cert-answers-clock_position_not_recorded = position horaire non notée
cert-answers-each_by_pin = Chacun par code.
cert-answers-not_authenticated = Non authentifié.
cert-answers-who_signs = Qui signe
cert-answers-practice_signatures_only = Signatures d’exercice seulement
cert-answers-with_technician_for = Avec { $name }, technicien, pour { $firm }
cert-answers-no_technician_has_signed_for = Aucun technicien n’a signé, pour { $firm }
cert-answers-the_owner_accepts_separately = { $technician }. { $known } Le maître d’ouvrage réceptionne à part.

## derive/attempts.rs

cert-attempts-not_begun = non commencé
cert-attempts-not_ended = non terminé
cert-attempts-the_parts_were_never_joined = Les composants n’ont jamais été réunis.
cert-attempts-working_time_over = , fin du temps d’emploi { $at }
cert-attempts-target_pressure = , pression de consigne { $at }
cert-attempts-parts_joined = Composants réunis { $at }{ $over }{ $target }.
cert-attempts-not_recorded = non noté
cert-attempts-of_resin_as_planned = { $mass } de résine selon le plan
cert-attempts-of_resin = { $mass } de résine
cert-attempts-patch_lot_and_lots_thrown = Manchette (lot { $patch }) et { $resin } (lots { $a }, { $b }) jetées.
cert-attempts-the_resin = la résine
cert-attempts-on_the_table_not_yet = Sur la table, pas encore dans la conduite
cert-attempts-in_the_pipe_not_expanded = Dans la conduite, non plaquée
cert-attempts-touching_the_wall = Touche la paroi
cert-attempts-stuck = Coincée
cert-attempts-not_asked_the_parts_were = Non demandé : les composants n’ont pas été réunis
cert-attempts-nobody_said = Personne ne l’a dit
cert-attempts-not_ended_2 = Non terminé
cert-attempts-attempt = {" "}(tentative { $n })

## derive/cautions.rs

cert-cautions-not_a_design = Ne dimensionne pas
cert-cautions-wall_thickness_and_pressure_figures = Les chiffres d’épaisseur et de pression sont des vérifications pour un ingénieur habilité, pas un dimensionnement de structure.
cert-cautions-not_a_product_test = Pas un essai produit
cert-cautions-it_does_not_say_that = Il ne dit pas que résine, manchette ou packer conviennent à cette conduite. Cela relève de la fiche technique et du fabricant.
cert-cautions-not_an_acceptance = Pas une réception
cert-cautions-the_owner_accepts_by_a = Le maître d’ouvrage réceptionne par un acte à part. Le résultat est celui de l’entreprise, selon les limites imprimées ici.
cert-cautions-hand_readings = Relevés à la main
cert-cautions-are_statements_of_the_person = sont les déclarations de la personne nommée. Les minutes que personne n’a vues ne comptent pas et sont montrées.
cert-cautions-before_going_near = Avant d’approcher
cert-cautions-confined_space_traffic_compressed_air = Espace confiné, circulation, air comprimé, résine non durcie ou chaude, styrène et eaux usées peuvent tuer. Permis, fiche technique, fiche de données de sécurité, règles locales et professionnels habilités décident.
cert-cautions-to_check_this_file = Vérifier ce fichier
cert-cautions-the_record = Le dossier
cert-cautions-to_keep_it = À conserver
cert-cautions-each_who_signed_opened_a = Chaque signataire a ouvert sa propre clé par un code. À qui est la clé, le maître d’ouvrage l’apprend de l’entreprise, pas de cette page.
cert-cautions-whose_key = À qui est la clé
cert-cautions-names_were_picked_from_a = Les noms ont été choisis dans une liste ; aucun code ni clé ne dit qui tenait l’appareil. Un trait dessiné ne prouve rien à lui seul.
cert-cautions-not_authenticated = Non authentifié
cert-cautions-not_a_repair = Pas réparé
cert-cautions-nothing_was_mended_the_pipe = Rien n’a été réparé. La conduite est une conduite d’exercice.
cert-cautions-not_a_length = Pas tout le tronçon
cert-cautions-of_was_mended_the_rest = { $mended } sur { $all } ont été réparés. Le reste du tronçon est comme avant.
cert-cautions-a_patch_lies_in_the = Une manchette est dans la conduite ; le défaut n’est pas réparé.
cert-cautions-the_defect_is_not_mended = Le défaut n’est pas réparé : { $why }.
cert-cautions-mendline_verify_file_answers_3 = « mendline verify FICHIER » répond 3 pour un exercice en règle signé par ses clés : pas un dossier.
cert-cautions-mendline_verify_file_tells_whether = « mendline verify FICHIER » dit si une clé l’a signé et s’il a été modifié, sans réseau.
cert-cautions-it_may_be_kept_for = Il peut être gardé pour la formation, à part des dossiers de réparation.
cert-cautions-keep_the_pdf_whole_and = Garder le PDF entier, et avec lui les photos originales, remises par l’entreprise. Une impression est une copie ; sa tête nomme encore le dossier.
cert-cautions-lies_whole_inside_this_file = est tout entier dans ce fichier, record.json : chaque entrée telle que hachée. Tout lecteur de PDF peut l’en extraire.
cert-cautions-is_not_inside_this_file = n’est pas dans ce fichier : le contrat { $contract } refuse les pièces jointes. L’entreprise le remet à part.

## derive/departures.rs

cert-departures-entered_by = , saisie par { $name }
cert-departures-waived_by_foreman = Accordé par { $foreman }, chef de chantier, { $at }{ $by }.
cert-departures-contract = contrat { $clause }

## derive/identity.rs

cert-identity-no_key = sans identifiant
cert-identity-owner = Maître d’ouv.
cert-identity-contract = Contrat
cert-identity-contractor = Entreprise
cert-identity-repair = Réparation
cert-identity-inspection = Inspection
cert-identity-working_time = Tps d’emploi
cert-identity-position = Position
cert-identity-measured_id = DI mesuré
cert-identity-video = Vidéo
cert-identity-hold = Maintien
cert-identity-full_cure = Durciss.
cert-identity-without_a_number = sans numéro
cert-identity-no_attempt = aucune tentative
cert-identity-attempt_of = tentative { $n } sur { $count }
cert-identity-none_read_in_the_defect = aucune lue : le défaut a été saisi à la main
cert-identity-without_a_date = sans date
cert-identity-used_of = { $used } utilisées sur { $allowed }
cert-identity-target_pressure_never_reached_allowed = pression de consigne jamais atteinte ; { $allowed } permises
cert-identity-none_target_pressure_never_reached = aucun : pression de consigne jamais atteinte
cert-identity-required_page = { $counted }, { $required } exigées (page @<{ $page }>)
cert-identity-nominal_dn = { $why } ; nominal DN { $dn }
cert-identity-to = , jusqu’à { $at }
cert-identity-not_said_how = sans dire comment
cert-identity-after_not_recorded = après : non noté
cert-identity-after_confirmed = après : confirmée { $at }
cert-identity-before = avant { $before } ; { $after }
cert-identity-its_clock_never_ran = son horloge n’a jamais tourné
cert-identity-lateral_cut = branchement fraisé { $at }
cert-identity-tested = essayé { $at }
cert-identity-flow_restored = écoulement rétabli { $at }
cert-identity-no_entry = aucune entrée
cert-identity-no_position = pas de position : { $why }
cert-identity-no_position_the_source_gave = pas de position : la source a donné 0, 0, ce qui n’en est pas une
cert-identity-the_source_gave_0_0 = la source a donné 0, 0, ce qui n’en est pas une
cert-identity-the_device_was_not_asked = l’appareil n’a pas été interrogé
cert-identity-the_device_may_not_tell = l’appareil n’a pas le droit de la dire
cert-identity-the_device_could_not_find = l’appareil n’a pas pu la trouver
cert-identity-the_device_had_not_found = l’appareil ne l’avait pas encore trouvée
cert-identity-accuracy_not_stated = précision non indiquée
cert-identity-receiver = récepteur
cert-identity-browser = navigateur
cert-identity-typed = saisie
cert-identity-old_device_at = { $radius }, âge { $age }, { $source }, appareil { $device } à { $at }

## derive/notes.rs

cert-notes-written = Écrit
cert-notes-devices_had_gone_on_apart = { $of } appareils avaient continué chacun de leur côté. { $by } a choisi à { $at } lequel compte : { $reason } Le dossier garde les deux.
cert-notes-chosen = Choisi
cert-notes-this_is_patch_of_a = Manchette { $this } d’une série de { $all } : le défaut n’est recouvert que par toutes ensemble, chacune étant une réparation à part.
cert-notes-series = Série
cert-notes-excursion = Sortie de plage
cert-notes-a_note_the_attempt_is = { $what } { $net } : une note, qui ne rend pas la tentative douteuse. Non compté (page @<{ $page }>).
cert-notes-still_pressed_to_the_wall = Toujours plaquée à la paroi
cert-notes-net_stayed_at_or_above = La pression nette { $net } est restée au moins égale au minimum de la fiche, { $least_words }
cert-notes-net_fell_below_the_sheets = La pression nette { $net } est passée sous le minimum de la fiche, { $least_words }, mais après le maintien exigé
cert-notes-the_whole_gap_is_lost = toute la lacune est perdue
cert-notes-what_is_beyond_interval_and = ce qui dépasse intervalle et tolérance est perdu
cert-notes-nobody_wrote_why = personne n’a écrit pourquoi
cert-notes-of_the_hold_to_gap = { $time } du maintien, { $from } à { $to } : { $why }. Règle des lacunes : { $lost } ({ $source } ; page @<{ $page }>).
cert-notes-not_witnessed = Non surveillé
cert-notes-nobody_said_whether_anything_of = Personne n’a dit s’il en reste dans la conduite.
cert-notes-in_the_pipe = Dans la conduite : « { $what } », { $by }.
cert-notes-page = { $outcome } { $at } : { $why }. { $pipe } (Page @<{ $page }>.)
cert-notes-attempt = Tentative { $n }
cert-notes-back = en arrière
cert-notes-forward = en avant
cert-notes-the_device_was_started_anew = L’appareil a redémarré entre-temps, seule son heure dit combien de temps ; le maintien à cheval sur le redémarrage n’est pas compté.
cert-notes-the_clock_since_the_start = L’horloge depuis le démarrage de l’appareil a continué : elle mesure les étapes et le maintien, aucune minute n’a été gagnée ou perdue.
cert-notes-clock = Horloge
cert-notes-the_clock_of_device_was = L’horloge de l’appareil { $device } a été décalée de { $by } { $way }, vu à { $at }. { $then }
cert-notes-correction = Correction
cert-notes-corrected_to_page = { $label } : { $old } corrigé en { $new } (page @<{ $page }>).
cert-notes-filled_in_late = Noté après coup
cert-notes-after_their_stage = Après leur étape : { $filled }.
cert-notes-keyed_in = { $what } { $happened } (saisi { $tapped })
cert-notes-from_paper = Du papier
cert-notes-written_on_paper_and_keyed = Écrit sur papier et saisi par { $by }, les deux heures sont gardées : { $text }.
cert-notes-a_reading = un relevé
cert-notes-tapped_later_by_both_times = { $what } { $happened }, saisi { $late } plus tard par { $by } : les deux heures sont gardées.
cert-notes-tapped_late = Saisi tard
cert-notes-test_push_begun = passage à blanc commencé
cert-notes-packer_at_the_mark_in = packer au repère lors du passage à blanc
cert-notes-packer_back_from_the_test = packer ressorti du passage à blanc
cert-notes-parts_joined = composants réunis
cert-notes-insertion_begun = introduction commencée
cert-notes-packer_at_the_mark = packer au repère
cert-notes-air_line_joined = flexible d’air branché
cert-notes-target_pressure_reached = pression de consigne atteinte
cert-notes-at = { $what } à { $at }
cert-notes-answered_again = Nouvelle réponse
cert-notes-before_last_by = { $label } : avant, { $earlier } ; en dernier par { $now }.
cert-notes-the_foremans_decision = {" "}La décision du chef de chantier : { $label }.
cert-notes-reported = Signalé
cert-notes-nobody_recorded_where_round_the = Personne n’a noté où sur le tour se trouve le défaut ; il est dessiné sur tout le tour.
cert-notes-clock_position = Position horaire

## derive/reasons.rs

cert-reasons-no_sewer_was_repaired_and = Aucun égout n’a été réparé et aucun maître d’ouvrage n’est concerné. Heures, relevés et photos de ces pages ont été faits en exercice.
cert-reasons-not_final = Pas définitif
cert-reasons-a_rehearsal_cant_be_turned = Un exercice ne peut pas devenir un certificat. Pour une réparation, un nouveau dossier est ouvert.
cert-reasons-not_mended = Non réparé
cert-reasons-the_defect_is_not_mended = Le défaut n’est pas réparé. Nul ne peut prendre ce dossier pour un certificat.
cert-reasons-voided_by = {" "}Annulé par { $name }, { $at }.
cert-reasons-supersedes = Remplace
cert-reasons-this_paper_takes_the_place = Ce document remplace { $number } du { $day }, qui ne compte plus. { $why }{ $by }
cert-reasons-doubtful = Douteux
cert-reasons-net_fell_below_the_sheets = { $what } La pression nette { $net } est passée sous le minimum de la fiche, { $least }, avant la fin du maintien : la tentative est douteuse (page @<{ $page }>).
cert-reasons-recorded_by_the_attempt_is = { $says } Noté par { $by } : la tentative est douteuse.
cert-reasons-the_foremans_decision = { $what } La décision du chef de chantier : { $label }.
cert-reasons-below = sous
cert-reasons-above = au-dessus de
cert-reasons-for_and_perhaps_longer = pendant { $lasted } et peut-être plus
cert-reasons-for_at_most = pendant { $lasted } au plus
cert-reasons-at_the_window_resin_old = { $pressure } à { $at }, { $depth } { $side } la plage, { $lasted }, résine âgée de { $age } : { $why }
cert-reasons-attempt = Tentative { $n }, { $by }.
cert-reasons-in_the_pipe = Dans la conduite : « { $what } ».
cert-reasons-accepted = Acceptée
cert-reasons-rejected = Refusée
cert-reasons-discarded = Jetée
cert-reasons-left_in_pipe = Laissée en place
cert-reasons-abandoned = Abandonnée
cert-reasons-closed = Close
cert-reasons-next = Suite
cert-reasons-the_repair_is_not_closed = La réparation n’est pas close : tentative { $n }, ou clôture sans réparation avec un motif.

## derive/signatures.rs

cert-signatures-nobody_has_put_a_name = personne n’a mis son nom sous ce dossier
cert-signatures-practice_signature_drawn_proves_nothing = Signature d’exercice, dessinée : ne prouve rien sur une conduite.
cert-signatures-picked_as = { $name }, choisi comme { $tapped }
cert-signatures-device = appareil { $device }

## layout/answers.rs

cert-answers-result = Résultat
cert-answers-a_tick_in_a_black = Une coche dans un disque noir : acceptée
cert-answers-a_cross_in_a_white = Une croix dans un carré blanc : refusée
cert-answers-an_r_in_a_lozenge = Un R dans un losange : exercice
cert-answers-a_bar_in_a_white = Une barre dans un carré blanc : close sans réparation

## layout/departures.rs

cert-departures-more_notes_each_in_full = D’autres notes, chacune en entier : page @<{ $page }>.
cert-departures-page = page @<{ $page }>
cert-departures-each_with_reason_name_and = Chacun avec motif, nom et heure : { $page }.
cert-departures-each_in_full = { $names }. Chacun en entier : { $page }.
cert-departures-and_more = et { $count ->
    [one] { $count } autre
   *[other] { $count } autres
  }
cert-departures-each_in_full_2 = Chacun en entier : { $page }.

## layout/head.rs

cert-head-qr_code_with_what_the = Code QR avec ce que dit la page : numéro, réparation, résultat, date, entrées et tête du dossier
cert-head-head_of_the_practice = Tête de l’exercice
cert-head-entries_each_marked_as_a = { $digits }{"\u000A"}{ $entries }, chacune marquée exercice. Pas de code à lire : ce dossier n’est pas à consulter.
cert-head-what_it_shows = Ce qu’il montre
cert-head-that_nothing_changed_since_these = que rien n’a changé depuis la signature par ces clés d’exercice, { $when }. Les clés ont été faites pour cet exercice puis jetées ; « mendline verify » dit : un exercice en règle, pas un dossier.
cert-head-nothing_no_key_signed_it = rien : aucune clé ne l’a signé, et un trait dessiné ne prouve rien.
cert-head-what_it_is_not = Ce qu’il n’est pas
cert-head-a_record_of_a_repair = un dossier de réparation. Il peut être gardé pour la formation. Qui le montre comme preuve d’une réparation a tort.
cert-head-head_of_the_record = Tête du dossier
cert-head-the_seal_proves = Le sceau prouve
cert-head-no_change_to_this_file = que ce fichier n’a pas changé depuis le scellement, { $when }, avec la clé { $key } …
cert-head-it_does_not_prove = Il ne prouve pas
cert-head-who_held_the_phone_or = qui tenait le téléphone, ni qu’un relevé à la main est vrai. Un trait dessiné ne prouve rien à lui seul. À qui est la clé, le maître d’ouvrage l’apprend de l’entreprise, pas de cette page.
cert-head-not_sealed_by_a_key = Non scellé par une clé
cert-head-a_drawn_line_proves_nothing = Un trait dessiné ne prouve rien, et ce fichier peut être modifié sans laisser de trace.
cert-head-what_can_be_checked = Ce qui est vérifiable
cert-head-the_head_above_against_the = la tête ci-dessus avec le dossier : elle nomme chaque entrée, mais pas cette page.

## layout/running.rs

cert-running-page_of = page { $page } sur { $pages }

## layout/signatures.rs

cert-signatures-not_signed = { $role }, non signé : { $why }
cert-signatures-pin = , code
cert-signatures-no_line_drawn = , sans trait dessiné
cert-signatures-line_drawn_by = Trait dessiné par { $name }
cert-signatures-practice = EXERCICE

## layout/wording.rs

cert-wording-sectional_repair_certificate = Certificat de réparation ponctuelle
cert-wording-repair_record_rejected = Dossier de réparation – refusée
cert-wording-rehearsal_record_not_a_certificate = Dossier d’exercice – pas un certificat
cert-wording-repair_record_closed_unrepaired = Dossier de réparation – close sans réparation
cert-wording-departures_and_what_else_went = Écarts, et ce qui est sorti des règles
cert-wording-why_rejected_and_what_went = Pourquoi refusée, et ce qui est sorti des règles
cert-wording-what_was_practised_and_what = L’exercice, et ce qu’il ne montre pas
cert-wording-why_closed_unrepaired_and_what = Pourquoi close sans réparation, et ce qui est sorti des règles
cert-wording-practice_signatures = Signatures d’exercice
cert-wording-signatures = Signatures
cert-wording-cautions_and_what_this_certificate = Avertissements, et ce que ce certificat n’est pas
cert-wording-cautions_and_what_this_record = Avertissements, et ce que ce dossier n’est pas
cert-wording-end_of_the_certificate = Fin du certificat
cert-wording-end_of_the_record = Fin du dossier
cert-wording-rehearsal_practice_not_a_certificate = EXERCICE. Pas un certificat.
cert-wording-the_sealed_pdf_is_the = Le PDF scellé est l’original ; une impression est une copie.
cert-wording-not_sealed_by_a_key = Non scellé par une clé : voir page 1.

## More

cert-count-departures = { $count ->
    [one] { $count } écart
   *[other] { $count } écarts
  }
cert-count-doubts = { $count ->
    [one] { $count } doute
   *[other] { $count } doutes
  }
cert-count-attempts = { $count ->
    [one] { $count } autre tentative
   *[other] { $count } autres tentatives
  }
cert-count-corrections = { $count ->
    [one] { $count } correction
   *[other] { $count } corrections
  }
cert-count-excursions = { $count ->
    [one] { $count } sortie de plage
   *[other] { $count } sorties de plage
  }
cert-count-clock_changes = { $count ->
    [one] { $count } changement d’horloge
   *[other] { $count } changements d’horloge
  }
cert-answers-with_departures = avec { $count ->
    [one] { $count } écart
   *[other] { $count } écarts
  }
cert-answers-outside = par le chef de chantier, { $count ->
    [one] { $count } constat
   *[other] { $count } constats
  } hors limites
cert-signatures-technician = Technicien
cert-signatures-foreman = Chef de chantier
cert-signatures-no_technician = Aucun technicien
cert-signatures-no_foreman = Aucun chef de chantier
cert-signatures-no_technician_signed = aucun technicien n’a signé
cert-signatures-no_foreman_signed = aucun chef de chantier n’a signé
cert-departures-value_not_kept = (valeur non gardée)
cert-departures-articles = le la les un une
cert-identity-north = N
cert-identity-south = S
cert-identity-east = E
cert-identity-west = O
cert-head-entries = { $entries } entrées
cert-head-chain = { $digits }{"\u000A"}{ $entries }, SHA-256, chaque entrée contient la précédente.
cert-head-chain_and_code = { $digits }{"\u000A"}{ $entries }, SHA-256, chaque entrée contient la précédente. Le code porte la même tête.
cert-running-record_head = Tête { $hash }   { $made }
cert-heading-stages = Les neuf étapes
cert-heading-working_time = Temps d’emploi
cert-heading-hold = Le maintien
cert-heading-materials = Matériaux, outils et lots
cert-heading-sheets = Valeurs des fiches et du contrat
cert-heading-checks = Vérifications calculées
cert-heading-findings = Constats du contrôle
cert-heading-departures = Écarts en entier
cert-heading-notes = Notes en entier
cert-heading-attempts = Autres tentatives
cert-heading-corrections = Corrections
cert-heading-photos = Photos
cert-form-technician = Signature du technicien
cert-form-foreman = Signature du chef de chantier
cert-attachment-description = Le dossier de cette réparation : chaque entrée de sa chaîne, pour des programmes
cert-running-made_by = { $program }, hors ligne, appareil { $device }
cert-sealing-key = clé { $key }
cert-signatures-quoted = « { $statement } »
