### Contrôle, revue, signatures, certificat, et vérification d’un dossier.

verify-recorded = enregistré
verify-open = à faire
verify-fill = Compléter ce qui manque
verify-fill_note = { $n } d’étapes passées
verify-earlier =
  { $n ->
    [one] { $n } point d’une étape passée reste à faire
   *[other] { $n } points d’étapes passées restent à faire
  }
verify-earlier_note = à saisir, noté « après coup »
verify-edge = { $edge }, { $at }
verify-limit = limite { $n }
verify-inside = conforme
verify-too_high = au-dessus de la limite
verify-no_value = rien de saisi
verify-scale = { $value } pour une limite de { $most }
verify-limit_from = Limite : { $source }.
verify-laterals = Branchements
verify-laterals_count = recouverts { $covered }, rouverts { $opened }
verify-lateral = { $at }, { $hour } h
verify-closed_until = Bloqué jusqu’à { $at }. Rouvert avant, c’est un écart pour le chef de chantier.
verify-may_open = Durcissement complet atteint.
verify-say_opened = Il a été rouvert
verify-opened = Rouvert à { $at }, à { $pct } %, pastille sortie.
verify-opened_no_coupon = Rouvert à { $at }, à { $pct } %, pastille non retrouvée.
verify-photos = Photos
verify-of = { $n } sur { $of }
verify-site = Chantier
verify-if_asked = si demandé
verify-note = Écrire une note
verify-photo = Garder une autre photo
verify-photos_all = Enregistrer le dossier en l’état, { $n ->
    [one] { $n } photo
   *[other] { $n } photos
  }
verify-record_so_far = chaque entrée avec son empreinte
verify-stop = finir cette tentative, ou dire ce qui s’est passé
verified-cured = Durcissement complet depuis { $at }
verified-cure_from = Durcissement complet dès { $at }
verified-cure_tape = { $gone } passées sur { $all }
verified-joined = réunis à { $at }
verified-target_pressure = à la consigne à { $at }
verified-reached = atteint
verified-to_go = encore { $span }
verified-fold = pli, { $n }
verified-fold_at = pli, { $n }, { $hour } h
verified-lift = décollé
verified-lateral = branchement, { $hour } h, recouvert
verified-lateral_open = branchement, { $hour } h, rouvert
verified-drawing = Manchette de { $from } à { $to } avec les constats
verified-caption = État constaté. Largeurs à l’échelle, hauteurs non.
review-title =
  { $n ->
    [0] Aucun point
    [1] Un point
    [2] Deux points
    [3] Trois points
    [4] Quatre points
    [5] Cinq points
    [6] Six points
    [7] Sept points
    [8] Huit points
    [9] Neuf points
    [10] Dix points
   *[other] { $n } points
  } hors du plan{ $open ->
    [0] {""}
    [one] , un vous attend
    [2] , deux vous attendent
    [3] , trois vous attendent
   *[other] , { $open } vous attendent
  }
review-nothing = Rien hors du plan
review-nothing_text = Toutes les règles ont tenu, chaque minute a été surveillée, rien n’a été corrigé.
review-me = { $name }, { $role }
review-go = À la revue du chef de chantier
review-go_note =
  { $n ->
    [one] { $n } écart attend
   *[other] { $n } écarts attendent
  }
review-doubtful = Cette tentative est douteuse.
review-doubtful_text = La manchette a pu se décoller de la paroi. Regarder les photos du tour complet avant de décider.
review-doubt = la rend douteuse
review-line = Frise de { $n ->
    [one] la tentative
   *[other] { $n } tentatives
  } avec { $marks ->
    [one] { $marks } repère
   *[other] { $marks } repères
  }
review-caption = Écarts, corrections, lacunes et tentatives
review-mark = Repère
review-what = Quoi
review-evidence = Preuve
review-decision = Décision
review-decision_on = Décision : { $what }
review-yes = Accepter
review-no = Ne pas accepter
review-reason = Motif, imprimé
review-found = trouvé par la règle
review-printed = Imprimé.
review-both_printed = Ancien et nouveau sont imprimés.
review-gap_printed = Imprimé. { $counted } min sur { $of } sans cela.
review-outside_printed = Imprimé. Les minutes voisines ne comptent pas.
review-said = { $who } a accepté à { $at } : « { $why } »
review-never = Aucune dérogation possible.
review-decide = À décider : { $which }
review-accept_one = Accepter { $n }
review-accept_one_note = par le chef de chantier, avec le motif
review-reject = Ou la refuser
review-reject_why = Ce qui ne va pas
review-reject_act = Refuser cette tentative
review-reject_note = la manchette reste au dossier comme refusée
review-back = Retour
review-to_verification = Retour au contrôle
review-accept = Accepter la réparation
review-accept_note =
  { $n ->
    [0] par le chef de chantier
    [one] par le chef de chantier, avec { $n } écart
   *[other] par le chef de chantier, avec { $n } écarts
  }
review-correct = Corriger une valeur
review-signs = Aux signatures
review-signs_note = technicien et chef de chantier
review-again = Ce qui est hors du plan
review-again_note = tel que revu
correct-title = Corriger une valeur
correct-reading = Relevé { $n }
correct-gauge = Pression
correct-pipe = Paroi
correct-water = Eau
correct-was = enregistré : { $n }
correct-why = Pourquoi c’était faux
correct-kept = Ancien et nouveau restent.
correct-kept_text = Une correction nomme ce qu’elle corrige, l’ancienne valeur, la nouvelle et le motif. Tout est imprimé.
correct-nothing = rien n’est changé
correct-act = Enregistrer la correction
off-attempt = Tentative { $n }.
off-accepted = Acceptée par le chef de chantier
off-rejected = Tentative refusée
off-discarded = Manchette jetée
off-left_in_pipe = Manchette restée en place
off-abandoned = Tentative abandonnée
off-correction = Correction
off-at = à { $at }
off-gap = Non surveillé
off-gap_text = { $span } du maintien, { $from } – { $to }. Non compté.
off-outside = Hors plage
off-outside_text = { $span } du maintien, { $from } – { $to }. Non compté.
off-late = Saisi après coup
off-late_text =
  { $n ->
    [one] { $n } réponse
   *[other] { $n } réponses
  } après la fin de l’étape.
off-which = Lesquelles
off-clock = Horloge réglée
off-clock_text = De { $by }, à { $at }.
off-clock_restarted = De { $by }, à { $at }, appareil éteint.
signs-title = Deux signatures
signs-of = { $n } sur { $of }
signs-who = { $name }, { $role }
signs-hold = { $counted } min sur { $of }
signs-photos = Photos
signs-photos_n =
  { $n ->
    [0] aucune
    [one] { $n }, avec son empreinte
   *[other] { $n }, chacune avec son empreinte
  }
signs-means = Qui signe a lu { $n ->
    [0] ce dossier
    [one] ce point
   *[other] ces { $n } points
  } et en répond. Un changement ultérieur annule la signature. La réception par le maître d’ouvrage est un autre acte.
signed-title = Ce qui est signé
signed-departures = Écarts
signed-no_departure = Aucun.
signed-all = Et tout le reste du dossier : { $n } entrées, chacune enchaînée à la précédente.
sign-next = Prochaine signature : { $role }.
sign-next_text = Chacun signe sous son propre nom. Le choisir d’abord.
sign-honest = Ce que prouve un trait dessiné :
sign-honest_text = rien sur qui l’a tracé. Une fois le PDF établi, votre clé le signe. Sans clé, un changement ne se remarque pas.
sign-pick = Choisir : { $role }
sign-now = Actuellement : { $name }
sign-to_certificate = Au certificat
sign-issued = Le certificat est établi. On ne signe plus rien.
sign-not_yet = On signe une fois la réparation acceptée, refusée ou close par le chef de chantier.
sign-back = Retour à la réparation
sign-back_note = la suite s’y trouve
certificate-none = Pas encore établi
certificate-issued = Établi
certificate-pdf_note = PDF, à imprimer et à archiver
certificate-means = Accepté par le chef de chantier.
certificate-means_text = La réception par le maître d’ouvrage est un autre acte. Garder le dossier à côté du PDF : tout le monde peut le vérifier.
certificate-not_mended = Le défaut n’est pas réparé.
certificate-not_mended_text = Le dossier dit ce qui a été tenté et pourquoi cela a pris fin. Le garder à côté du PDF : tout le monde peut le vérifier.
certificate-rehearsal = Un exercice.
certificate-rehearsal_text = Il ne prouve rien sur une conduite. Le classer à part des certificats.
done-sign = Signer
done-issued = Certificat
ending-rejected = Dossier : refusée
ending-unrepaired = Dossier : non réparé
ending-null = Certificat
done-reason = Pourquoi pas de manchette
done-signed = { $at }, tracé, sans authentification
done-signed_pin = { $at }, tracé, avec code
done-not_signed = n’a pas signé
done-draw = { $role } : tracer la signature
done-as = en tant que { $name }, { $role }
done-pad = Champ pour la signature tracée
done-again = Tracer de nouveau
done-sign_act = Signer
done-issue = Établir le certificat
done-issue_note = lui donne son numéro
done-issue_record = Établir le dossier
done-pdf = Enregistrer le certificat
done-pdf_record = Enregistrer le dossier en PDF
done-record = Enregistrer le dossier
done-record_note = chaque entrée avec son empreinte, vérifiable par tous
done-today = Retour à aujourd’hui
statement-technician = J’ai fait cette réparation, je l’ai enregistrée au fur et à mesure, et j’ai lu les valeurs marquées H.
statement-foreman_rejected = J’ai examiné ce dossier. Je n’accepte pas cette réparation.
statement-foreman_unrepaired = J’ai examiné ce dossier. Le défaut n’est pas réparé.
statement-foreman = J’ai examiné ce dossier, je réponds des écarts nommés, et j’établis ce certificat au nom de l’entreprise.
check-stays = rien ne quitte cet appareil
check-file = Certificat ou dossier
check-other = Un autre certificat ou dossier
check-what = Le certificat en PDF, ou le dossier enregistré à côté.
check-act = Vérifier
check-act_note = sans réseau
check-valid = Inchangé depuis l’écriture
check-valid_lead = {""}
check-changed = Changé, ou incomplet
check-changed_lead = Ne pas se fier à ce fichier. Demander le fichier complet à l’entreprise.
check-photo_lead = Le fichier lui-même n’a pas été modifié. Demander la photo telle qu’elle a été prise.
check-unreadable = Pas un dossier
check-unreadable_lead = {""}
check-rehearsal = Un exercice intact, pas un dossier
check-rehearsal_lead = Aucune réparation n’a été faite ; cela ne prouve rien sur une conduite.
check-chain = Chaîne de { $n ->
    [one] { $n } entrée
   *[other] { $n } entrées
  }
check-breaks = l’entrée { $n } ne s’enchaîne pas
check-looked = Ce qui a été vérifié
looked-chain = La chaîne est entière
looked-chain_wrong = La chaîne est rompue
looked-chain_note =
  { $n ->
    [0] une entrée ne suit pas la précédente, ou son texte n’est pas celui qui a été écrit
    [one] { $n } entrée, tête { $head }
   *[other] { $n } entrées, tête { $head }
  }
looked-head = La tête est celle de la dernière entrée
looked-head_wrong = Il manque des entrées à la fin
looked-head_note = la comparer à la tête imprimée sur le certificat : une coupe ou une réécriture du tout ne se voit que là
looked-top = Numéro et nature sont ceux des entrées
looked-top_wrong = En-tête et entrées ne concordent pas
looked-top_note = un exercice ne peut passer pour un dossier
looked-complete = Complet, avec son certificat
looked-complete_wrong = Incomplet
looked-complete_note = accepté et établi, ou clos sans manchette
looked-signatures = Les deux ont tracé leur signature
looked-signatures_wrong = Il manque une signature
looked-signatures_note = un trait ne prouve rien sur qui l’a tracé
looked-file = Inchangé depuis la signature
looked-file_wrong = Changé, ou aucune clé ne l’a signé
looked-file_note = chaque octet est couvert par une clé ; rien n’a été ajouté après la dernière
looked-keys = Les deux clés ont signé
looked-keys_wrong = Une clé manque, est inconnue, révoquée ou faite pour l’exercice
looked-keys_note = l’heure de signature est celle de l’horloge du signataire
looked-pages = Les pages disent ce que dit le dossier inclus
looked-pages_wrong = Pages et dossier ne concordent pas
looked-pages_note = tête de chaîne, nombres, conduite, nœuds, signataires
looked-originals = Aucune photo d’origine n’a été modifiée
looked-originals_wrong = Une photo d’origine a été modifiée
looked-originals_note = parmi celles apportées ; une photo absente ne dit rien
check-keys = Qui a signé
check-holds = La signature est valable.
check-broken = La signature n’est pas valable.
check-trust_not_asked = Aucune clé n’est connue ici pour comparer.
check-trust_trusted = La clé est dans la liste des personnes.
check-trust_unknown = La clé n’est pas dans la liste des personnes.
check-trust_rehearsal = Une clé faite pour l’exercice.
check-revoked = Révoquée dès { $at }.
check-superseded = Remplacé par { $number }
check-superseded_text = Demander celui-là à l’entreprise.
seal-title = Clés
seal-signed = { $at }, par clé
seal-open = la clé n’a pas encore signé
seal-done = Les deux clés ont signé.
seal-done_text = Tout changement du PDF sera désormais vu par quiconque le vérifie.
seal-rehearsal = Les clés sont faites pour cet exercice, puis jetées.
seal-turn = Clé suivante : { $name }.
seal-turn_text = Passer l’appareil, ou choisir le nom.
seal-no_key = { $name } n’a pas de clé.
seal-no_key_text = En créer une dans la liste des personnes. Sans elle, le PDF n’est pas protégé contre un changement.
seal-act = Signer avec ma clé
seal-act_rehearsal = Signer avec des clés d’exercice
check-says = Ce qu’il dit
check-repair = Réparation
check-attempt = Tentative
check-attempt_of = { $n }, { $how }
check-none = aucune
check-head = Tête
check-certificate = Certificat
check-proves = La chaîne prouve que rien n’a changé depuis l’écriture, tant que la tête est celle du certificat. Elle ne prouve pas qui a écrit. Accepté par le chef de chantier ; la réception par le maître d’ouvrage est un autre acte.
