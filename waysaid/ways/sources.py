"""The sources that the names and notes of families lean on, by id, told to a teacher."""

from collections.abc import Mapping

SOURCES: Mapping[str, str] = {
    "ccss": "Common Core State Standards for Mathematics (2010)",
    "ccss-5nf2": "Common Core State Standards for Mathematics (2010), 5.NF.2",
    "il-guide": "Illinois classroom guides to 1.OA.6 and 2.NBT.5",
    "utah": "a Utah district’s guide to 4.NBT.6",
    "eng-nc2014": "National curriculum in England: mathematics (2013)",
    "tcm2010": "Teaching children to calculate mentally (England, 2010)",
    "nns1999": "Teaching mental calculation strategies (England, 1999), from memory",
    "acara": "Australian Curriculum v9 and National Numeracy Learning Progression",
    "vic1": "Victorian Curriculum: Mathematics",
    "nsw-nesa2022": "New South Wales: Mathematics K–10 Syllabus (2022)",
    "nz-ao": "New Zealand: elaborations of the Number Framework",
    "lefevre1996m": "LeFevre and others 1996, J. Exp. Psychology: General 125",
}
