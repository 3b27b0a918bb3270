### Preuves : le code d’une clé, les numéros des certificats.

certificate-supersedes = Remplace { $number }.
certificate-went_on = La réparation a continué après lui.
certificate-void = Annuler ce certificat
certificate-void_note = Il ne compte plus, et son numéro ne sert plus jamais. Corriger ce qui était faux, puis signer et établir à nouveau : le suivant nomme celui-ci et le motif.
certificate-void_why = Pourquoi il ne compte pas
certificate-void_act = Annuler { $number }
numbers-title = Numéros de cet appareil
numbers-note = chaque certificat, et ce qu’il est devenu
numbers-all = Certificats
numbers-none = Aucun certificat n’a encore été établi ici.
numbers-none_text = Chacun prend le numéro suivant de cet appareil.
numbers-issued = Établi
numbers-superseded = Remplacé par { $number }
numbers-voided = Annulé, et rien ne le remplace encore
numbers-taken = Attribué { $at }.
numbers-why = Annulé par { $by }, { $at } : { $reason }
key-change = Changer le code
key-old_pin = Ancien code
key-change_act = Prendre le nouveau code
check-originals = Les photos originales
check-originals_what =
  { $n ->
    [one] Le dossier nomme 1 photo par son SHA-256. Choisir l’original pour voir s’il est le même, octet pour octet.
   *[other] Le dossier nomme { $n } photos par leur SHA-256. Choisir les originaux pour voir s’ils sont les mêmes, octet pour octet.
  }
check-originals_files = Photos originales, autant que voulu
check-originals_more = D’autres photos originales
check-originals_act = Les comparer
check-original_found = présente, octet pour octet :
check-original_missing = n’est pas parmi les fichiers apportés
check-originals_sum = Sur { $of ->
    [one] { $of } photo
   *[other] { $of } photos
  }, { $found ->
    [one] { $found } est là
   *[other] { $found } sont là
  } octet pour octet, { $changed ->
    [one] { $changed } est modifiée
   *[other] { $changed } sont modifiées
  }, { $missing ->
    [one] { $missing } n’est pas encore apportée
   *[other] { $missing } ne sont pas encore apportées
  }. Une photo non apportée ne dit rien du certificat.
check-original_changed = modifiée : le fichier porte son nom et contient autre chose :
check-original_other = non nommée dans le dossier
check-original_unread = illisible
check-original_ask = demander pourquoi
