### Ce qui voyage entre appareils : branches, paquets, remise, sauvegarde.

apart-title = Deux appareils, une réparation
apart-way = { $n } appareils ont continué cette réparation
apart-way_note = Celui-ci montre sa version. Le chef de chantier choisit celle qui compte.
apart-none = Appareils concordants
apart-none_text = Cette réparation n’a qu’une suite. Il n’y a rien à choisir.
apart-same = Identique partout
apart-same_text =
  { $n ->
    [one] { $n } entrée, l’ouverture, est identique.
   *[other] { $n } entrées sont identiques.
  }
apart-same_until = La dernière est de { $at }.
apart-kept = Rien n’est perdu : ce qui n’est pas choisi reste au dossier et est imprimé comme écarté.
apart-own = Cet appareil
apart-other = Un autre appareil
apart-device = appareil { $id }
apart-count =
  { $n ->
    [one] { $n } entrée de plus
   *[other] { $n } entrées de plus
  }
apart-earlier =
  { $n ->
    [one] { $n } entrée plus ancienne
   *[other] { $n } entrées plus anciennes
  }
apart-nobody = personne n’est choisi
apart-choose = Laquelle compte ?
apart-pick = { $who }, jusqu’à { $at }
apart-reason = Motif
apart-act = Retenir la version choisie
apart-act_note = enregistré avec motif et nom
apart-step-opened = Ouverte : { $detail }
apart-step-plan_accepted = Plan accepté
apart-step-attempt_begun = Tentative { $detail } commencée
apart-step-stage_begun = Étape : { $detail }
apart-step-answered = Répondu : { $detail }
apart-step-go = Feu vert
apart-step-happened = Signalé : { $detail }
apart-step-doubted = Douteux : { $detail }
apart-step-broke = Enfreint : { $detail }
apart-step-waived = Dérogation : { $detail }
apart-step-corrected = Corrigé : { $detail }
apart-step-worked_out = Un calcul a été fait
apart-step-noted = Note : { $detail }
apart-step-photo_kept = Photo : { $detail }
apart-step-clock_set = Horloge décalée de { $detail }
apart-step-attempt_ended = Tentative finie : { $detail }
apart-step-unrepaired = Close sans manchette : { $detail }
apart-step-signed = Signé : { $detail }
apart-step-issued = Certificat { $detail }
apart-step-sealed = Clé a signé : { $detail }
apart-step-branch_chosen = Choisi : { $detail }
apart-step-voided = Certificat annulé : { $detail }

handing-title = Transmettre le maintien
handing-note = À un autre téléphone ; les minutes y continuent
handing-text = L’autre téléphone poursuit ce maintien : les mêmes minutes, la même plage, le dernier relevé. Ce qui est enregistré ici y reste aussi.
handing-to = À qui (peut rester vide)
handing-together = Garder les deux téléphones côte à côte jusqu’à ce que l’autre montre le maintien.
handing-act = Le transmettre
handing-act_note = enregistré avec les deux horloges de ce téléphone
given-title = Maintien transmis
given-way_note = Un autre téléphone rappelle maintenant les relevés
given-at = Transmis à { $at }.
given-to = Transmis à { $to } à { $at }.
given-file = 1. Donner le fichier
given-file_text = Le faire maintenant, pour que tous les relevés y soient. L’autre téléphone le charge.
given-code = 2. Montrer ce code
given-code_text = L’autre téléphone le photographie et sait ce que montre cette horloge. Ainsi, aucune minute n’est perdue ni gagnée. Sans le fichier, il suit l’horloge par ce code seul.
given-code_label = Code de ce maintien, fait pour cet instant
given-clock = Cette horloge montre { $at }. On peut aussi la saisir.
given-then = Jusqu’à ce qu’il montre le maintien
given-watch = Ce téléphone ne rappelle plus les relevés. Ce qui est encore saisi ici est gardé, mais sur une branche à part.
given-restarted = Ce téléphone a redémarré depuis ; son horloge ne dit plus rien. Reprendre le maintien, puis le transmettre encore une fois.
given-back = Le reprendre
given-back_note = Ce téléphone poursuit le maintien
given-look = Voir le maintien
given-look_note = Ses relevés et sa plage
given-taken = Le téléphone { $phone } a repris le maintien.
given-taken_text = Les relevés et le dégonflage se saisissent là-bas. Ce qui est saisi ici est gardé, mais sur une branche à part.
offer-title = Prendre le maintien
offer-way_note = Un autre téléphone l’a transmis et attend
offer-from = Le téléphone { $phone } a transmis ce maintien à { $at } à son horloge.
offer-counted = { $n } min sur { $of } comptées là-bas.
offer-code = Photographier son code
offer-code_text = Il est sur l’écran de l’autre téléphone.
offer-act = Le prendre
offer-act_note = par le code de la photo
offer-act_tied = par le code photographié à { $at }
offer-clock = Ou saisir son horloge
offer-clock_field = Elle montre (comme 14:05:30)
offer-clock_act = Le prendre par cette horloge
offer-clock_note = Si cela ajoute des minutes, le chef de chantier en répond
offer-without = L’autre téléphone n’est pas là
offer-without_text = Alors seule l’heure dit combien de temps a passé. Les minutes depuis son dernier relevé ne sont pas surveillées.
offer-without_act = Le prendre sans lui
offer-without_note = Ces minutes ne comptent pas
follow-title = Suivre un maintien par son code
follow-note = Un autre téléphone le montre ; son fichier n’est pas ici
follow-no_file = Sans son fichier
follow-text = Le téléphone qui a le maintien montre le code : « Transmettre le maintien ». Le photographier ici avant que ce téléphone s’éteigne.
follow-clock = Seule l’horloge passe.
follow-clock_text = Le dossier reste sur l’autre téléphone. Charger son fichier dès que possible.
follow-before = Déjà éteint ? Une photo du code prise avant par ce téléphone convient aussi.
follow-act = Suivre le maintien
follow-act_note = par le code de la photo
followed-title = Maintien sur un autre téléphone
followed-record = Le dossier est sur l’autre téléphone.
followed-paper = Noter les relevés sur papier jusqu’à ce que son fichier soit ici.
followed-counted = comptées là-bas jusqu’à { $at }
followed-tape =
  { $counted } minutes sur { $needed } comptées là-bas{ $pending ->
    [0] {""}
   *[other] , { $pending } de plus dépendent des relevés sur papier
  }
followed-pending = { $n } de plus si le papier est bon
followed-every = { $at }, puis toutes les { $n } min
followed-earliest = Dégonfler au plus tôt
followed-not_before = Ne pas dégonfler avant { $at }
followed-may_be = On peut peut-être dégonfler depuis { $at }
followed-if = Si chaque relevé est bon
followed-code = Ce que dit son code
followed-phone = Téléphone
followed-key_unknown = Ce téléphone n’est pas connu ici.
followed-key_unknown_text = Personne n’a vérifié qui a fait le code.
followed-key_false = Ne pas se fier à cette horloge.
followed-key_false_text = Ce téléphone est maintenant connu ici, et n’a pas fait le code.
followed-restarted = Ce téléphone a redémarré depuis.
followed-restarted_text = Les minutes suivent l’heure du jour, que quelqu’un a pu changer.
followed-anew = Photographier encore son code
followed-anew_note = Après un relevé saisi là-bas
followed-off = L’enlever de la liste
followed-off_note = Son horloge n’est plus montrée ici
followed-take = Charger son fichier
followed-take_note = puis prendre le maintien
followed-gone = N’est plus suivi ici
followed-gone_text = Son fichier est ici, il a été enlevé de la liste, ou il est fini depuis longtemps.
apart-step-handed_over = Maintien transmis : { $detail }
apart-step-taken_over = Maintien repris
