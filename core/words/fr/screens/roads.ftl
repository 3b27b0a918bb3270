### Réparations en route vers un autre appareil, et depuis un autre.

send-title = Envoyer des réparations
send-note = Vers un autre téléphone ou le bureau, en un fichier
send-one = Envoyer cette réparation
send-one_note = En un fichier avec ses photos, vers un autre appareil
send-since = Seulement ce qui a changé depuis (peut rester vide)
send-pick = Réparations
send-pick_note = aucune cochée : toutes
send-size = { $mb } Mo
send-none = Il n’y a encore aucune réparation ici.
send-act = Faire le fichier
send-act_note = signé par cet appareil, avec les photos
send-kept = Rien ne quitte cet appareil tout seul. Enregistrer le fichier, puis le remettre par câble, clé USB, courriel ou autrement.
send-half = La copie s’est interrompue ? Copier le même fichier encore une fois ; l’autre appareil reprend où il s’était arrêté.
send-made = Le fichier est prêt
send-made_n =
  { $repairs ->
    [one] { $repairs } réparation
   *[other] { $repairs } réparations
  }, { $photos ->
    [one] { $photos } photo
   *[other] { $photos } photos
  }
send-missing =
  { $n ->
    [one] { $n } photo manque ici, ou a changé, et n’est pas jointe.
   *[other] { $n } photos manquent ici, ou ont changé, et ne sont pas jointes.
  } La réparation est envoyée quand même.
send-save_again = Enregistrer encore
send-broke_off = Le fichier s’est interrompu pendant l’enregistrement. L’enregistrer encore une fois.
send-saving = Enregistrement : { $done } sur { $of } Mo
send-key = La clé de cet appareil
send-key_note = La dire à qui charge le fichier, de vive voix ou sur papier. Ainsi, on sait que le fichier est de vous.
take-title = Charger des réparations
take-note = Un fichier d’un autre téléphone ou du bureau
take-file = Le fichier (.mendline)
take-key = Clé de l’appareil d’envoi, si on vous l’a dite
take-key_note = Avec une clé, seul un fichier de cet appareil est chargé.
take-known =
  { $n ->
    [one] { $n } appareil déjà rencontré. Il est reconnu à sa clé.
   *[other] { $n } appareils déjà rencontrés. Ils sont reconnus à leur clé.
  }
take-act = Charger le fichier
take-act_note = tout, ou rien
take-bringing = Chargement : { $done } sur { $of } Mo
take-stopped = Le fichier s’est arrêté en route. Le choisir encore une fois : il reprend où il s’était arrêté.
take-done = Chargé
take-nothing_new = Tout était déjà ici
take-from = De l’appareil
take-its_key = Sa clé
take-first = Cet appareil est rencontré pour la première fois.
take-first_text = Comparer sa clé à ce que dit la personne. Désormais, seule cette clé parle pour lui.
take-photos = Photos
take-fresh =
  { $n ->
    [0] était déjà ici
    [one] { $n } nouvelle entrée
   *[other] { $n } nouvelles entrées
  }
take-apart = Elle a continué sur { $n } appareils. Tout est gardé ; le chef de chantier choisit ce qui compte.
