/* Timing for the C references: BENCH(statement) repeats the statement, `i` counting up, until a batch is long enough for the clock, then
   prints the nanoseconds of one time: processor time, the least of several batches, so that other work on the machine does not count.
   Add what the statement computes to `sink`, or the compiler drops the work. */
#include <stdio.h>
#include <time.h>

static volatile double sink;

static double bench_seconds(void) {
  struct timespec now;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
  return (double)now.tv_sec + 1e-9 * (double)now.tv_nsec;
}

#define BATCHES 7

#define BENCH(statement)                                                     \
  do {                                                                       \
    long times = 1;                                                          \
    double least = 0;                                                        \
    for (int batch = 0; batch < BATCHES;) {                                  \
      double start = bench_seconds();                                        \
      for (long i = 0; i < times; i++) {                                     \
        statement;                                                           \
      }                                                                      \
      double taken = bench_seconds() - start;                                \
      if (taken <= 0.02) {                                                   \
        times *= 2;                                                          \
        continue;                                                            \
      }                                                                      \
      double one = taken / (double)times;                                    \
      if (batch == 0 || one < least) least = one;                            \
      batch++;                                                               \
    }                                                                        \
    printf("%.6f\n", 1e9 * least);                                           \
  } while (0)
