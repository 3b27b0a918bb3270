### Une sauvegarde, et ce qui en revient.

backup-title = Sauvegarder
backup-last = Dernière sauvegarde
backup-last_on = La dernière : { $on }
backup-never = Jamais sauvegardé
backup-due = Il est temps d’en refaire une.
backup-due_lead = Sauvegardez.
backup-due_text = Ce qui n’est que sur cet appareil disparaît avec lui.
backup-free = Espace libre
backup-free_n = { $free } libres
backup-low = Les photos risquent bientôt de manquer de place. Sauvegardez, puis libérez de l’espace sur l’appareil.
backup-low_lead = { $free } libres.
backup-mb = { $n } Mo
backup-gb = { $n } Go
backup-word = Phrase de passe, 10 caractères ou plus
backup-word_note = Quatre mots conviennent. Notez-la et gardez-la à part du fichier : personne ne peut la retrouver.
backup-what = Toutes les réparations, photos, certificats et clés vont dans un seul fichier verrouillé. Tout programme qui lit le format age l’ouvre avec la phrase de passe.
backup-act = Faire la sauvegarde
backup-act_note = verrouillée par la phrase de passe
backup-made = La sauvegarde est faite
backup-files =
  { $n ->
    [one] { $n } fichier dedans
   *[other] { $n } fichiers dedans
  }
backup-away = Gardez-la ailleurs.
backup-away_text = Sur un autre appareil, une clé ou au bureau. À côté du téléphone, elle est perdue avec lui.
restore-title = Restaurer une sauvegarde
restore-note = Sur un appareil neuf ou vide
restore-text = Tout revient de la sauvegarde : réparations, photos, certificats, clés. L’appareil doit être vide.
restore-file = La sauvegarde (.tar.age)
restore-word = Sa phrase de passe
restore-device = Il compte comme un nouvel appareil, avec sa propre clé. Prévenez le bureau et révoquez les clés d’un appareil perdu.
restore-act = Restaurer
restore-act_note = tout ou rien
restore-done = Tout est revenu
restore-files = Fichiers
restore-damaged =
  { $n ->
    [one] { $n } chaîne était rompue
   *[other] { $n } chaînes étaient rompues
  } quand la sauvegarde a été faite. Rien n’y a été changé.
restore-people = Choisissez qui vous êtes avant de continuer.
