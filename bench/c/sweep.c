/* The sweep of bench/study.bench.ts: 1e6 designs through five formulas, results kept in columns as ours are. */
#include <math.h>
#include <stdlib.h>
#include "bench.h"

#define N 1000000
static double *friction, *groove, *age, *taut, *ratio;

__attribute__((noinline)) static void sweep(void) {
  friction = malloc(N * sizeof(double));
  groove = malloc(N * sizeof(double));
  age = malloc(N * sizeof(double));
  taut = malloc(N * sizeof(double));
  ratio = malloc(N * sizeof(double));
  long row = 0;
  for (int i = 0; i < 100; i++)
    for (int j = 0; j < 100; j++)
      for (int k = 0; k < 100; k++, row++) {
        double mu = 0.1 + 0.1 * i / 99, g = 12e-3 + 8e-3 * j / 99, t = 7200 + (31557600. - 7200) * k / 99;
        double share = 1 / (1 + (35e3 / 140) * 2e-4 * log10(t / 3600));
        friction[row] = mu;
        groove[row] = g;
        age[row] = t;
        taut[row] = share * 140 * exp(mu * 6);
        ratio[row] = (91.4e-3 + 1.6e-3) / 2 / ((g + 1.6e-3) / 2);
      }
  sink += taut[N - 1] + ratio[N / 2];
  free(friction);
  free(groove);
  free(age);
  free(taut);
  free(ratio);
}

int main(void) {
  BENCH(sweep());
  return 0;
}
