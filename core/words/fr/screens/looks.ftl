### L’estimation d’une fuite, et ce qui est dessiné à côté des positions.

pad-keys = Au clavier : les flèches déplacent le stylet, la barre d’espace le pose et le lève.
pad-typed = Un nom tapé n’est pas une signature.
pad-down = Stylet posé.
pad-up = Stylet levé.
drawn-asked = Trait à { $at } du centre de { $node }. Longueurs à l’échelle, hauteurs non.
places-clock = Arc ou point : le défaut. Amorce : un branchement sous la manchette. Barre : la couture.
hand-drawn = Longueurs à l’échelle depuis le centre de { $node } ; petits cadrans vus vers l’aval. Hauteurs non.
hand-drawing = Tronçon de { $from } à { $to } avec ce qui est saisi jusqu’ici
hand-here = défaut
reading-act_5 = Enregistrer les cinq
leak-title = Est-ce que ça fuit ?
leak-of =
  { $n ->
    [one] { $n } relevé depuis { $at }
   *[other] { $n } relevés depuis { $at }
  }
leak-outside_missing = Pas encore connu
leak-outside_missing_note = L’air extérieur n’a pas été relevé. Sans lui, on ne distingue pas un refroidissement d’une fuite.
leak-too_few_readings = Trop peu de relevés
leak-too_few_readings_note = Il en faut 5 avec la température de paroi, sans air ajouté entre-temps ; encore { $n }.
leak-steady = Aucune fuite visible
leak-steady_note = En une heure, la pression change moins que ce que les relevés peuvent montrer.
leak-cooling_only = Simple refroidissement
leak-cooling_only_note = La pression baisse parce que l’air du packer refroidit. Aucune fuite visible.
leak-leaking = Le packer fuit
leak-leaking_note = Le refroidissement est déduit. Regarder raccords, flexible et vanne ; remonter lentement, dans la plage.
leak-per_hour = Perte en une heure
leak-between = entre { $low } et { $high }, 95 %
leak-limit = Limite basse dans
leak-limit_at = vers { $at }, si cela continue
leak-limit_after = vers { $at }, après le premier dégonflage possible
leak-limit_now = maintenant
leak-enter = Saisir l’air extérieur
leak-enter_note = une fois, avec le prochain relevé
reading-outside_pa = Pression de l’air extérieur, absolue
reading-outside_once = une fois, pour la fuite
reading-outside_note = D’un baromètre sur place, ou la valeur météo pour cette altitude, pas celle ramenée au niveau de la mer. Environ 1 bar ; un manomètre indique 0.
remind-leak = { $node } : le packer fuit. Environ cinq minutes jusqu’à la limite basse.
