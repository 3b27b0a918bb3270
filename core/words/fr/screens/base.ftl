### Ce que chaque écran utilise.

app-name = Mendline
app-loading = Ouverture
# Twelve months from January and seven days from Sunday, short, parted by spaces (CLDR).
date-months = janv. févr. mars avr. mai juin juil. août sept. oct. nov. déc.
date-weekdays = dim. lun. mar. mer. jeu. ven. sam.
date-day = { $day } { $month }
rehearsal-word = EXERCICE
rehearsal-not_a_record = pas un dossier
stages-label = Étape { $n } sur { $of } : { $name }
stage-planned = Planifiée
stage-staging = Préparation
stage-test_push = Passage à blanc
stage-sleeve_change = Changement de housse
stage-wet_out = Imprégnation
stage-placement = Mise en place
stage-inflation = Gonflage
stage-hold = Maintien
stage-deflation = Dégonflage
stage-verification = Contrôle
stage-complete = Terminée
deck-stop = Arrêt
deck-photo = Photo
deck-note = Note
deck-ago = Il y a { $n } min
hold-keep = Garder appuyé
hold-holding = jusqu’au bout de la barre
hold-press_again = { $label } : appuyer encore une fois dans les 5 secondes pour confirmer.
hold-not_confirmed = Non confirmé.
hold-let_go = Relâché trop tôt. Appuyer 2 secondes.
hold-of = sur { $n } min
hold-tape =
  { $counted } minutes comptées sur { $needed }{ $pending ->
    [0] {""}
   *[other] , { $pending } de plus au prochain relevé
  }
cure-full = durcissement complet
cure-from = dès
cure-caution = Ni fraisage ni essai avant.
entry-less = { $label } : { $step } { $unit } de moins
entry-more = { $label } : { $step } { $unit } de plus
pair-yes = Oui
pair-no = Non
task-done = Fait
task-not_applicable = Sans objet
task-because = parce que
condition-met = Rempli :
condition-open = À faire :
condition-waived = Sans objet :
condition-closed = Bloqué :
condition-failed = Échec :
condition-rehearsal = Exercice :
clock-left = reste { $span }
clock-gone = { $span } écoulées
budget-label = { $needed } nécessaires sur { $total } de temps d’emploi
budget-ends = fin du temps d’emploi, { $at }
budget-short = Manque, sur { $total }
budget-left = Reste, sur { $total }
others-label = Autres chronos
others-what = relevé
others-mixed = mélange,
others-more = { $n } de plus
others-late = retard { $by }
light-label = Lumière
light-day = Jour
light-sun = Soleil
light-night = Nuit
problems-title =
  { $n ->
    [one] { $n } point à corriger
   *[other] { $n } points à corriger
  }
problem-number = { $label } : saisir un nombre.
problem-pick = { $label } Veuillez choisir.
problem-below = { $label } : au moins { $min }.
problem-above = { $label } : au plus { $max }.
refusal-title = Pas encore
refusal-way_out = Que faire :
banner-label = Avant tout
dialog-close = Fermer
unit-hour = h
line-read_here = lire ici
line-hose = flexible
line-rope = corde
detail-patch = manchette { $n }
detail-packer = packer { $n }
detail-defect = défaut { $n }
detail-cover_left = débord { $n }
detail-cover_right = { $n } débord
cover-asked = exigé { $n }
face-downstream = Vue vers l’aval
face-upstream = Vue vers l’amont
face-crown = voûte
face-invert = radier
hold-upper = { $bar } limite haute
hold-lower = { $bar } limite basse
hold-gap = { $n } min
hold-release = dégonfler
edge-upstream = bord amont
edge-downstream = bord aval
place-table = Sur la table
place-in_pipe = Dans la conduite, non plaquée
place-at_wall = Touche la paroi
place-stuck = Coincée
chain-head = tête
today-title = Aujourd’hui
broken-title = Cet écran ne s’affiche pas
broken-text = Une faute du programme. Ce qui est enregistré est en sûreté, et les autres écrans sont là.
broken-away = Il n’est pas arrivé. Ce qui est enregistré et ce qui a été tapé est en sûreté.
broken-again = Réessayer
lost-title = Rien ici
lost-text = Aucun écran derrière { $path }.
lost-back = Retour à aujourd’hui
unreachable-title = Le dossier ne répond pas
unreachable-text = Rien de ce qui est saisi n’est perdu. La demande repart toutes les quelques secondes.
recorded = Enregistré.
saved = Enregistré : { $name }
saved-not = Non enregistré.
saved-download = Téléchargé : { $name }
problem-file = Choisir d’abord un fichier.
step-value = { $value } { $unit }
hold-started = Appui en cours.
error-title = Cela n’a pas marché
error-kept = Le dossier est comme avant.
waiting =
  { $n ->
    [one] { $n } saisie attend d’être enregistrée. Elle est gardée sur cet appareil.
   *[other] { $n } saisies attendent d’être enregistrées. Elles sont gardées sur cet appareil.
  }
