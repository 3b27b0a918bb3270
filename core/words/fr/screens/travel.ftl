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
apart-step-clock_set = Horloge réglée de { $detail }
apart-step-attempt_ended = Tentative finie : { $detail }
apart-step-unrepaired = Close sans manchette : { $detail }
apart-step-signed = Signé : { $detail }
apart-step-issued = Certificat { $detail }
apart-step-sealed = Clé a signé : { $detail }
apart-step-branch_chosen = Choisi : { $detail }
apart-step-voided = Certificat annulé : { $detail }
