/* The three-joint leg's inverse, state (position, Jacobian, statics) and inverse dynamics, the same algebra as src/kinematics, for bench/kinematics.bench.ts.
   Usage: leg inverse|state|dynamics */
#include <math.h>
#include <string.h>
#include "bench.h"

#define N 1024
static double targets[N][3], q[N][3], w[N][3], a[N][3], out[16];

typedef struct { double d, l1, l2, off2, far_, near_, squares, upper_twice, slack; } Leg;
typedef struct { double d, l1, l2, hip[10], upper[10], lower[10], rotor[4], lift[3]; } Dyn;

__attribute__((noinline)) static int inverse(const Leg *g, double *o, double x, double y, double z, int branch) {
  double height = y * y + z * z - g->off2;
  if (height < 0) { if (height < -g->slack) return 3; height = 0; }
  double distance = x * x + height;
  double far_ = g->far_ - distance, near_ = distance - g->near_;
  if (far_ < 0) { if (far_ < -g->slack) return 1; far_ = 0; }
  if (near_ < 0) { if (near_ < -g->slack) return 2; near_ = 0; }
  double s = (branch & 1) == 0 ? sqrt(far_ * near_) : -sqrt(far_ * near_);
  double c = distance - g->squares;
  double along = g->upper_twice + c;
  double Z = (branch & 2) == 0 ? -sqrt(height) : sqrt(height);
  o[0] = atan2(z * g->d - y * Z + 0., y * g->d + z * Z + 0.);
  o[1] = atan2(Z * s - x * along + 0., -Z * along - x * s + 0.);
  o[2] = atan2(s + 0., c);
  return 0;
}

__attribute__((noinline)) static void state(const Leg *g, double *o, double q1, double q2, double q3, double fx, double fy, double fz) {
  double q23 = q2 + q3;
  double sx = -g->l2 * sin(q23), sz = -g->l2 * cos(q23);
  double X = sx - g->l1 * sin(q2), Z = sz - g->l1 * cos(q2);
  double s = sin(q1), c = cos(q1);
  double y = g->d * c - Z * s, z = g->d * s + Z * c;
  double in = fy * s - fz * c;
  o[0] = X; o[1] = y; o[2] = z;
  o[3] = 0; o[4] = Z; o[5] = sz;
  o[6] = -z; o[7] = X * s; o[8] = sx * s;
  o[9] = y; o[10] = -X * c; o[11] = -sx * c;
  o[12] = y * fz - z * fy; o[13] = Z * fx + X * in; o[14] = sz * fx + sx * in;
}

__attribute__((noinline)) static void dynamics(const Dyn *g, double *o, const double *q, const double *w, const double *a, double rx, double ry, double rz) {
  const double d = g->d, l1 = g->l1, l2 = g->l2;
  const double *hip = g->hip, *upper = g->upper, *lower = g->lower;
  double s1 = sin(q[0]), c1 = cos(q[0]), s2 = sin(q[1]), c2 = cos(q[1]), s3 = sin(q[2]), c3 = cos(q[2]);
  double s23 = s2 * c3 + c2 * s3, c23 = c2 * c3 - s2 * s3;
  double w1 = w[0], w2 = w[1], w23 = w2 + w[2], a1 = a[0], a2 = a[1], a23 = a2 + a[2];
  double A1x = g->lift[0], A1y = g->lift[1] * c1 + g->lift[2] * s1, A1z = g->lift[2] * c1 - g->lift[1] * s1;
  double b1y = hip[2], b1z = hip[3];
  double f1y = hip[0] * (A1y - a1 * b1z - w1 * w1 * b1y), f1z = hip[0] * (A1z + a1 * b1y - w1 * w1 * b1z);
  double hy = A1y - w1 * w1 * d, hz = A1z + a1 * d;
  double A2x = c2 * A1x - s2 * hz, A2z = s2 * A1x + c2 * hz;
  double wx2 = c2 * w1, wz2 = s2 * w1, ax2 = c2 * a1 - wz2 * w2, az2 = s2 * a1 + wx2 * w2;
  double m2 = upper[0], u2x = upper[1], u2y = upper[2], u2z = upper[3];
  double d2 = wx2 * u2x + w2 * u2y + wz2 * u2z, ww2 = wx2 * wx2 + w2 * w2 + wz2 * wz2;
  double f2x = m2 * (A2x + a2 * u2z - az2 * u2y + wx2 * d2 - ww2 * u2x);
  double f2y = m2 * (hy + az2 * u2x - ax2 * u2z + w2 * d2 - ww2 * u2y);
  double f2z = m2 * (A2z + ax2 * u2y - a2 * u2x + wz2 * d2 - ww2 * u2z);
  double h2x = upper[4] * wx2 + upper[7] * w2 + upper[8] * wz2, h2y = upper[7] * wx2 + upper[5] * w2 + upper[9] * wz2,
         h2z = upper[8] * wx2 + upper[9] * w2 + upper[6] * wz2;
  double n2x = upper[4] * ax2 + upper[7] * a2 + upper[8] * az2 + w2 * h2z - wz2 * h2y;
  double n2y = upper[7] * ax2 + upper[5] * a2 + upper[9] * az2 + wz2 * h2x - wx2 * h2z;
  double n2z = upper[8] * ax2 + upper[9] * a2 + upper[6] * az2 + wx2 * h2y - w2 * h2x;
  double kx = A2x - a2 * l1 - wx2 * wz2 * l1, ky = hy + ax2 * l1 - w2 * wz2 * l1, kz = A2z + (wx2 * wx2 + w2 * w2) * l1;
  double A3x = c3 * kx - s3 * kz, A3z = s3 * kx + c3 * kz;
  double wx3 = c23 * w1, wz3 = s23 * w1, ax3 = c23 * a1 - wz3 * w23, az3 = s23 * a1 + wx3 * w23;
  double m3 = lower[0], u3x = lower[1], u3y = lower[2], u3z = lower[3];
  double d3 = wx3 * u3x + w23 * u3y + wz3 * u3z, ww3 = wx3 * wx3 + w23 * w23 + wz3 * wz3;
  double f3x = m3 * (A3x + a23 * u3z - az3 * u3y + wx3 * d3 - ww3 * u3x);
  double f3y = m3 * (ky + az3 * u3x - ax3 * u3z + w23 * d3 - ww3 * u3y);
  double f3z = m3 * (A3z + ax3 * u3y - a23 * u3x + wz3 * d3 - ww3 * u3z);
  double h3x = lower[4] * wx3 + lower[7] * w23 + lower[8] * wz3, h3y = lower[7] * wx3 + lower[5] * w23 + lower[9] * wz3,
         h3z = lower[8] * wx3 + lower[9] * w23 + lower[6] * wz3;
  double n3x = lower[4] * ax3 + lower[7] * a23 + lower[8] * az3 + w23 * h3z - wz3 * h3y;
  double n3y = lower[7] * ax3 + lower[5] * a23 + lower[9] * az3 + wz3 * h3x - wx3 * h3z;
  double n3z = lower[8] * ax3 + lower[9] * a23 + lower[6] * az3 + wx3 * h3y - w23 * h3x;
  double ry1 = ry * c1 + rz * s1, rz1 = rz * c1 - ry * s1;
  double g3x = c23 * rx - s23 * rz1, g3z = s23 * rx + c23 * rz1;
  double F3x = f3x - g3x, F3y = f3y - ry1, F3z = f3z - g3z;
  double N3x = n3x + u3y * f3z - u3z * f3y - l2 * ry1, N3y = n3y + u3z * f3x - u3x * f3z + l2 * g3x, N3z = n3z + u3x * f3y - u3y * f3x;
  double P3x = c3 * F3x + s3 * F3z, P3z = c3 * F3z - s3 * F3x;
  double F2x = f2x + P3x, F2z = f2z + P3z;
  double N2x = n2x + u2y * f2z - u2z * f2y + c3 * N3x + s3 * N3z + l1 * F3y;
  double N2y = n2y + u2z * f2x - u2x * f2z + N3y - l1 * P3x;
  double N2z = n2z + u2x * f2y - u2y * f2x + c3 * N3z - s3 * N3x;
  o[0] = hip[4] * a1 + b1y * f1z - b1z * f1y + c2 * N2x + s2 * N2z + d * (c2 * F2z - s2 * F2x) + g->rotor[0] * a1;
  o[1] = N2y + g->rotor[1] * a2 + g->rotor[2] * a[2];
  o[2] = N3y + g->rotor[2] * a2 + g->rotor[3] * a[2];
}

static double draw(void) {
  static unsigned long long s = 88172645463325252ull;
  s ^= s << 13; s ^= s >> 7; s ^= s << 17;
  return (double)(s >> 11) / 9007199254740992.0;
}

int main(int argc, char **argv) {
  const char *what = argc > 1 ? argv[1] : "inverse";
  double d = .058, l1 = .165, l2 = .180;
  Leg g = {d, l1, l2, d * d, (l1 + l2) * (l1 + l2), (l1 - l2) * (l1 - l2), l1 * l1 + l2 * l2, 2 * l1 * l1, 8 * 2.220446049250313e-16 * ((l1 + l2) * (l1 + l2) + d * d)};
  Dyn y = {d, l1, l2,
           {.6, 0, .04, 0, .0005, .0006, .0004, 0, 0, 0},
           {.35, .002, .005, -.06, .001, .0011, .0002, 1e-5, 2e-5, -1e-5},
           {.18, .003, 0, -.08, .0006, .0006, .00008, 0, 1e-5, 0},
           {0, 0, 0, 0}, {0, 0, 9.80665}};
  for (int i = 0; i < N; i++) {
    q[i][0] = .8 * (draw() - .5); q[i][1] = 1.4 * (draw() - .5); q[i][2] = .3 + 1.8 * draw();
    for (int j = 0; j < 3; j++) { w[i][j] = 10 * (draw() - .5); a[i][j] = 200 * (draw() - .5); }
    state(&g, out, q[i][0], q[i][1], q[i][2], 0, 0, 0);
    memcpy(targets[i], out, sizeof targets[i]);
  }
  double total = 0;
  if (!strcmp(what, "inverse")) {
    BENCH({ double *t = targets[i & (N - 1)]; inverse(&g, out, t[0], t[1], t[2], 0); total += out[0] + out[1] + out[2]; });
  } else if (!strcmp(what, "state")) {
    BENCH({ double *t = q[i & (N - 1)]; state(&g, out, t[0], t[1], t[2], 5, -3, -60); total += out[0] + out[14]; });
  } else {
    BENCH({ long k = i & (N - 1); dynamics(&y, out, q[k], w[k], a[k], 5, -3, 60); total += out[0] + out[1] + out[2]; });
  }
  sink = total;
  return 0;
}
