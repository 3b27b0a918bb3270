### Faults and refused files, said again for a reader of another language.

## Faults of the journal and its disk
again-fault-the_disk_is_full_nothing_of = Le stockage est plein. Rien de ceci n’a été écrit ; ce qui était enregistré est en sûreté. Libérez de la place, puis réessayez.
again-fault-another_program_is_writing_to_this = Un autre programme écrit dans ce répertoire. Rien de ceci n’a été écrit. Réessayez dans un instant.
again-fault-the_journal_can_only_be_read = Ici, le journal ne peut qu’être lu. Rien de ceci n’a été écrit. Utilisez le répertoire d’origine pour enregistrer.
again-fault-this_user_may_not_read_it = Cet utilisateur ne peut pas lire { $path }. Le fichier est resté tel quel et son contenu est en sûreté. Demandez au propriétaire du répertoire le droit de lire et d’écrire.
again-fault-the_last_entries_stand_in_wal = Les dernières entrées sont dans { $path }-wal, illisible là où rien ne peut être écrit. Les deux fichiers sont restés tels quels et leur contenu est en sûreté. Copiez tout le répertoire sur un disque où l’on peut écrire, et ouvrez la copie.
again-fault-is_not_a_mendline_journal_it = { $path } n’est pas un journal de Mendline. Il est resté tel quel. Choisissez un autre répertoire de données.
again-fault-the_journal_file_itself_is_damaged = Le fichier du journal lui-même est endommagé ({ $what }). Il est resté tel quel et plus rien n’y est écrit. Copiez d’abord tout le répertoire de données, exportez les dossiers encore lisibles, puis restaurez une sauvegarde.
again-fault-found_while_it_was_read = constaté à la lecture
again-fault-this_repair_can_be_read_and = { $damage } Cette réparation peut être lue et exportée, mais n’accepte plus d’entrées. Rien n’a été changé ni réparé.
again-fault-repair_entry_of_device = Réparation { $repair }, entrée { $seq } de l’appareil { $device } : { $flaw }.
again-fault-nothing_was_taken_in = { $damage } Rien n’a été chargé.
again-fault-it_was_not_taken_in_what = { $damage } Rien n’a été chargé ; ce qui est gardé ici est en sûreté. Redemandez le paquet.
again-fault-this_folder_was_written_by_a = Ce répertoire a été écrit par un Mendline plus récent (forme { $found } ; celui-ci connaît { $known }). Il est resté tel quel. Mettez ce programme à jour.
again-fault-repair_has_moved_on_since_this = La réparation { $repair } a avancé depuis cette décision. Rien de ceci n’a été écrit. Regardez à nouveau, puis décidez.
again-fault-request_id_was_already_used_for = L’identifiant de demande { $request } a déjà servi à autre chose. Rien de ceci n’a été écrit. Renvoyez avec un nouvel identifiant.
again-fault-the_journal_could_not_be_read = Le journal n’a pu être lu ou écrit ({ $what }). Rien de ceci n’a été écrit ; ce qui était enregistré est en sûreté. Vérifiez le disque, puis réessayez.
again-fault-an_entry_of_this_repair_is = Une entrée de cette réparation n’est pas du texte.
again-fault-a_repair_with_entries_of_devices = une réparation avec des entrées de { $devices } appareils ; { $most } sont permis

## Photos and labels
again-fault-the_disk_is_full_the_photo = Le stockage est plein. La photo n’a pas été gardée ; ce qui était enregistré est en sûreté. Libérez de la place, puis reprenez-la.
again-fault-photo_is_not_in_this_folder = La photo { $sha256 } n’est pas dans ce répertoire. Le journal est en sûreté. Chargez le paquet qui la contient, ou restaurez une sauvegarde.
again-fault-photo_was_changed_on_the_disk = La photo { $sha256 } a été changée sur le disque après avoir été gardée. Elle est restée telle quelle. Chargez le paquet qui la contient, ou restaurez une sauvegarde.
again-fault-the_photo_could_not_be_read = La photo n’a pu être lue ou écrite ({ $what }). Ce qui était enregistré est en sûreté. Vérifiez le disque, puis réessayez.
again-fault-the_picture_cant_be_read_take = L’image est illisible ({ $why }). Reprenez-la, en JPEG ou PNG.
again-fault-this_repair_has_no_such_photo = Cette réparation n’a pas cette photo. Ouvrez ses photos et annotez l’une d’elles.
again-fault-the_product_number_has_a_wrong = Le numéro de produit { $number } a un chiffre de contrôle faux : il y a { $printed }, il faudrait { $computed }. Rephotographiez l’étiquette ; si cela reste, tapez ce qui est imprimé et prévenez le fournisseur.
again-fault-the_code_gives_as_a_date = Le code donne « { $value } » comme date, ce n’en est pas une. Tapez ce qui est imprimé.
again-fault-the_code_ends_within_application_identifier = Le code s’arrête dans l’identifiant de données ({ $identifier }). Rephotographiez l’étiquette.
again-fault-the_code_has_where_application_identifier = Le code porte « { $value } » là où l’identifiant de données ({ $identifier }) demande autre chose. Tapez ce qui est imprimé.
again-fault-the_picture_shows_two_labels_and = L’image montre deux étiquettes : « { $one } » et « { $other } ». Photographiez-en une seule.
again-fault-the_code_says_neither_product_lot = Le code ne dit ni produit, ni lot, ni dernier jour valable. Cherchez un autre code sur l’étiquette, ou tapez ce qui est imprimé.
again-fault-no_code_was_found_in_the = Aucun code trouvé dans l’image. Approchez jusqu’à ce qu’il en remplisse la moitié, restez immobile, évitez les reflets ; ou tapez ce qui est imprimé.
again-fault-the_code_is_no_gs1_code = Ce n’est pas un code GS1 : il dit « { $says } ». Cherchez un autre code sur l’étiquette, ou tapez ce qui est imprimé.
again-fault-the_clock_of_this_device_shows = L’horloge de cet appareil n’affiche pas de date. Réglez-la d’abord.

## Keys and signatures
again-fault-the_device_gave_no_random_numbers = L’appareil n’a pas donné de nombres aléatoires. Aucune clé n’a été faite. Redémarrez l’appareil.
again-fault-the_pdf_cant_be_signed = Le PDF ne peut être signé : { $what }.
again-fault-the_certificate_in_this_file_is = Le certificat de ce fichier n’est pas valable aujourd’hui. Demandez-en un nouveau à qui l’a délivré.
again-fault-the_key_of_this_person_is = La clé de cette personne est sur un autre appareil, et y est utilisée.
again-fault-the_key_could_not_be_read = La clé n’a pu être lue ou écrite : { $why }. Ce qui est enregistré est en sûreté.
again-fault-is_damaged_restore_it_from_a = { $path } est endommagé : restaurez-le d’une sauvegarde.
again-fault-next_comes_the_key_of_the = Vient maintenant la clé ({ $role }) : { $name }, qui a tracé la signature.
again-fault-the_certificate_could_not_be_made = Le certificat n’a pu être fait. { $problem }
again-fault-the_certificate_could_not_be_kept = Le certificat n’a pu être gardé : { $why }. Il n’est pas signé. Vérifiez le disque.
again-fault-in_this_folder_it_is = { $whole } Dans ce répertoire, il est remplacé par { $later } : { $why }
again-fault-in_this_folder_it_is_voided = { $whole } Dans ce répertoire, il est annulé : { $why }

## Files that come and go
again-fault-the_top_of_this_record_does = L’en-tête de ce dossier ne dit pas ce que disent ses entrées. Rien n’a été chargé ; redemandez le fichier.
again-fault-the_request_has_no_id_or = La demande n’a pas d’identifiant, ou il est trop long.
again-fault-this_command_has_a_request_of = Cette commande a sa propre demande.
again-fault-this_request_does_not_open_a = Cette demande n’ouvre pas de réparation.
again-fault-a_photo_is_asked_for_by = Une photo se demande par son SHA-256.
again-fault-the_file_did_not_arrive_whole = Le fichier n’est pas arrivé entier : { $problem }.
again-fault-the_file_is_larger_than_16 = Le fichier dépasse 16 Go. Il n’a pas été chargé.
again-fault-the_piece_is_too_long_nothing = Le morceau est trop long. Rien n’en a été gardé.
again-fault-only_of_bytes_are_here_choose = Seuls { $here } octets sur { $of } sont là. Choisissez à nouveau le fichier.
again-fault-the_file_could_not_be_read = Le fichier n’a pu être lu ou écrit : { $why }. Ce qui est enregistré est en sûreté.
again-fault-this_is_not_a_file_of = Ce n’est pas un fichier de fiches, ou il n’est pas arrivé entier : { $problem }. Redemandez-le au bureau.
again-fault-its_form_is_not_known_here = Sa forme n’est pas connue ici. Utilisez la même version du programme sur les deux appareils.
again-fault-it_holds_documents_ask_the_office = Il contient { $count } documents. Redemandez-le au bureau.
again-fault-nothing_was_taken_in_also = Rien n’a été chargé.
again-fault-the_method_statement_needs_a_task = Le mode opératoire a besoin d’une tâche de type { $kind } dans { $stage } : un passage d’étape la demande.
again-fault-it_was_not_made_with_a = elle n’a pas été faite avec une phrase de passe
again-fault-there_is_no_journal_in_it = il n’y a pas de journal dedans
again-fault-it_holds_which_is_nothing_of = elle contient { $inside }, qui n’est pas de nous
again-fault-its_passphrase_asks_for_more_work = sa phrase de passe demande plus de calcul qu’aucune de nos sauvegardes
again-fault-it_did_not_arrive_whole_or = elle n’est pas arrivée entière, ou a été changée : { $why }

## Bundles
again-fault-there_is_no_repair_in_this = Il n’y a pas de réparation { $repair } dans ce répertoire. Rien n’a été fait.
again-fault-these_are_too_many_repairs_for = C’est trop de réparations pour un fichier. Envoyez-en moins, ou seulement ce qui a changé depuis un jour.
again-fault-the_bundle_could_not_be_written = Le paquet n’a pu être écrit : { $why }. Ce qui est enregistré est en sûreté. Faites de la place ou choisissez un autre endroit, puis envoyez-le de nouveau.
again-fault-this_is_not_a_bundle_of = Ce n’est pas un paquet de Mendline. Rien n’a été chargé.
again-fault-this_bundle_was_made_by_a = Ce paquet a été fait par un Mendline plus récent (forme { $found } ; celui-ci connaît { $known }). Rien n’a été chargé. Mettez ce programme à jour.
again-fault-the_bundle_did_not_arrive_whole = Le paquet n’est pas arrivé entier : il est bon jusqu’à l’octet { $at }. Rien n’a été chargé. Renvoyez-le.
again-fault-at_byte_the_bundle_holds_what = À l’octet { $at }, le paquet contient de l’illisible : { $what }. Rien n’a été chargé. Redemandez-le.
again-fault-at_byte_the_bundle_holds_a = À l’octet { $at }, le paquet contient une partie de { $bytes } octets ; { $most } sont permis. Rien n’a été chargé.
again-fault-the_signature_of_the_bundle_is = La signature du paquet n’est pas bonne : il a été changé en route. Rien n’a été chargé. Redemandez-le.
again-fault-device_is_known_here_by_another = L’appareil { $device } est connu ici par une autre clé ({ $known }) ; ce paquet a { $found }. Rien n’a été chargé. Demandez à l’expéditeur.
again-fault-the_bundle_is_not_signed_with = Le paquet n’est pas signé avec la clé indiquée, mais avec { $found }. Rien n’a été chargé.
again-fault-the_bundle_carries_a_photo_that = Le paquet contient une photo qu’aucune de ses entrées ne nomme ({ $sha256 }). Rien n’a été chargé.
again-fault-the_bundle_cant_be_read_nothing = Le paquet est illisible : { $what }. Rien n’a été chargé.

## What was typed
again-fault-nothing_is_typed = rien n’est saisi
again-fault-is_not_a_number = { $typed } n’est pas un nombre
again-fault-could_be_a_thousand_or_a = { $typed } pourrait être un millier ou une décimale : écrivez-le sans virgule, ou avec un point
again-fault-is_no_unit_of_this_field = { $unit } n’est pas une unité de ce champ : utilisez { $known }
again-fault-is_too_large = { $typed } est trop grand
again-fault-m_from_the_upstream_node_is = À { $far } m du nœud amont, ce n’est pas sur le tronçon de { $length } m.

## Inspection files
again-fault-was_not_taken_in = { $name } n’a pas été chargé.
again-fault-line_expected_found = ligne { $line } : attendu { $expected }, trouvé { $found }
again-fault-pick_at_least_one_observation = choisissez au moins une observation
again-fault-the_observation_of_line_has_no = l’observation de la ligne { $line } n’a pas d’abscisse
again-fault-the_observation_of_line_is_one = l’observation de la ligne { $line } est une extrémité du défaut continu { $number } : choisissez les deux
again-fault-the_file_says_its_bytes_say = le fichier dit { $label }, ses octets disent { $other } : lu comme { $as }
again-fault-the_character_set_is_not_known = le jeu de caractères { $label } n’est pas connu : lu comme { $as }
again-fault-the_file_names_no_character_set = le fichier ne nomme pas de jeu de caractères : lu comme { $as }
again-fault-no_start_node_aab_taken_from = pas de nœud de départ (AAB) : pris de l’observation BCD, { $node }
again-fault-direction_c_not_known_upstream_and = sens C (inconnu) : les nœuds amont et aval ne sont pas connus
again-fault-column_is_not_in_en_13508 = la colonne { $name } n’est pas dans l’EN 13508-2 : laissée de côté
again-fault-is_not_in_en_13508_2 = <{ $name }> n’est pas dans l’EN 13508-2 : laissé de côté
again-fault-in_column_k_joint_is_not = { $text } dans la colonne K (assemblage) n’est pas A : laissé de côté
again-fault-the_last_inspection_ends_without_z = la dernière inspection finit sans #Z, mais elle atteint sa fin
again-fault-a_date_such_as_2026_09 = une date comme 2026-09-22 (ABF)
again-fault-a_time_such_as_09_05 = une heure comme 09:05 (ABG)
again-fault-a_with_the_flow_or_b = A (avec l’écoulement) ou B (contre) pour AAK
again-fault-a_distance_in_m_0_or = une distance en m, 0 ou plus
again-fault-a_size_in_mm_0_or = une dimension en mm, 0 ou plus
again-fault-a_main_code_such_as_bab = un code principal comme BAB (colonne A)
again-fault-a_clock_hour_from_1_to = une position horaire de 1 à 12
again-fault-the_closing_on_the_same_line = le { $quote } fermant sur la même ligne
again-fault-an_inspection_b01 = une inspection (#B01=)
again-fault-the_end_of_the_file = la fin du fichier
again-fault-the_field_separator = le séparateur de champs
again-fault-a1_of_the_text_form_or = #A1= de la forme texte ou <DATA> de la forme XML
again-fault-three_different_characters_in_a3_a4 = trois caractères différents dans #A3, #A4 et #A5
again-fault-at_most_cells = au plus { $most } cellules
again-fault-at_most_header_fields = au plus { $most } champs d’en-tête
again-fault-a_row_with_the_values_of = une ligne avec les valeurs de { $names }
again-fault-a_column_a_main_code = une colonne A (code principal)
again-fault-a_file_without_a_document_type = un fichier sans type de document
again-fault-the_root_element_data = l’élément racine <DATA>
