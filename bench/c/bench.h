/* Timing for the C references: BENCH(statement) repeats the statement, `i` counting up, until a batch is long enough for the clock, then
   prints the nanoseconds of one time. Add what the statement computes to `sink`, or the compiler drops the work. */
#include <stdio.h>
#include <time.h>

static volatile double sink;

static double bench_seconds(void) {
  struct timespec now;
  clock_gettime(CLOCK_MONOTONIC, &now);
  return (double)now.tv_sec + 1e-9 * (double)now.tv_nsec;
}

#define BENCH(statement)                                                     \
  do {                                                                       \
    long times = 1;                                                          \
    double taken = 0;                                                        \
    for (;;) {                                                               \
      double start = bench_seconds();                                        \
      for (long i = 0; i < times; i++) {                                     \
        statement;                                                           \
      }                                                                      \
      taken = bench_seconds() - start;                                       \
      if (taken > 0.02) break;                                               \
      times *= 2;                                                            \
    }                                                                        \
    printf("%.6f\n", 1e9 * taken / (double)times);                           \
  } while (0)
