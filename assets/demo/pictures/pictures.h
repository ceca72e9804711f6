// The motifs: linocuts of a shore, each for a sheet of the size that draw_pictures.cpp gives it.
#pragma once

#include "lino.h"

namespace lino {

void kelp(Sheet& sheet);
void spring_tide(Sheet& sheet);
void neap_tide(Sheet& sheet);
void gull(Sheet& sheet);
void shell(Sheet& sheet);
void dunes(Sheet& sheet);
void boats(Sheet& sheet);
void lighthouse(Sheet& sheet);
void mussels(Sheet& sheet);
void swell(Sheet& sheet);
void moonrise(Sheet& sheet);
void shoal(Sheet& sheet);
void harbour(Sheet& sheet);

}  // namespace lino
