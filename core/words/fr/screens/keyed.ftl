### Ce qui a été écrit sur papier et saisi plus tard.

keyed-title = Saisir depuis le papier
keyed-about = ce qui a été écrit à la main, avec les heures de la feuille
keyed-lead = Régler le jour et l’heure inscrits sur la feuille. Parcourir ensuite les écrans comme d’habitude. Chaque entrée porte « du papier » et garde les deux heures : celle du fait et celle de la saisie.
keyed-rule = À l’avantage de l’équipe.
keyed-rule_text = La pression de consigne et les relevés du maintien repris du papier ne comptent que si le chef de chantier en répond. C’est imprimé.
keyed-day = Jour sur la feuille
keyed-time = Heure sur la feuille
keyed-on = Saisir depuis le papier ?
keyed-act = Aller à l’étape
keyed-act_on = Les entrées prennent l’heure de la feuille
keyed-act_off = Les entrées prennent l’heure actuelle
keyed-strip = Du papier
keyed-wants = Régler d’abord le jour et l’heure. D’ici là, les entrées prennent l’heure actuelle.
keyed-end = Finir la saisie du papier
keyed-mark = du papier
off-paper = Du papier
off-paper_text =
  { $n ->
    [one] { $n } entrée a été saisie
   *[other] { $n } entrées ont été saisies
  } plus tard.
off-paper_entry = { $what } { $at }, saisi { $keyed }
