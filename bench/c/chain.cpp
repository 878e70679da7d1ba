// The same leg as a generic chain of the system's orocos-KDL, for bench/kinematics.bench.ts.
// Usage: chain inverse|dynamics <joints>
#include <kdl/chain.hpp>
#include <kdl/chainfksolverpos_recursive.hpp>
#include <kdl/chainidsolver_recursive_newton_euler.hpp>
#include <kdl/chainiksolverpos_lma.hpp>
#include <cmath>
#include <cstdlib>
#include <cstring>
#include <vector>
#include "bench.h"
using namespace KDL;

static double draw() {
  static unsigned long long s = 88172645463325252ull;
  s ^= s << 13; s ^= s >> 7; s ^= s << 17;
  return (double)(s >> 11) / 9007199254740992.0;
}

int main(int argc, char **argv) {
  const char *what = argc > 1 ? argv[1] : "inverse";
  const int N = 1024;
  double total = 0;
  if (!strcmp(what, "inverse")) {
    const double d = .058, l1 = .165, l2 = .180;
    Chain chain;
    chain.addSegment(Segment(Joint(Joint::RotX), Frame(Vector(0, d, 0))));
    chain.addSegment(Segment(Joint(Joint::RotY), Frame(Vector(0, 0, -l1))));
    chain.addSegment(Segment(Joint(Joint::RotY), Frame(Vector(0, 0, -l2))));
    ChainFkSolverPos_recursive fk(chain);
    Eigen::Matrix<double, 6, 1> weights;
    weights << 1, 1, 1, 0, 0, 0;
    ChainIkSolverPos_LMA ik(chain, weights, 1e-9, 500, 1e-15);
    std::vector<Frame> targets(N);
    JntArray q(3), seed(3), found(3);
    seed(0) = 0; seed(1) = -.3; seed(2) = .9;
    for (int i = 0; i < N; i++) {
      q(0) = .8 * (draw() - .5); q(1) = 1.4 * (draw() - .5); q(2) = .3 + 1.8 * draw();
      for (int j = 0; j < 6; j++) draw();
      fk.JntToCart(q, targets[i]);
    }
    int failed = 0;
    for (int i = 0; i < N; i++) failed += ik.CartToJnt(seed, targets[i], found) < 0;
    if (failed > 0) fprintf(stderr, "generic inverse: %d of %d targets not solved\n", failed, N);
    BENCH({ ik.CartToJnt(seed, targets[i & (N - 1)], found); total += found(0) + found(2); });
  } else {
    const int n = argc > 2 ? atoi(argv[2]) : 6;
    Chain chain;
    for (int i = 0; i < n; i++)
      chain.addSegment(Segment(Joint(i % 3 == 0 ? Joint::RotX : Joint::RotY), Frame(Vector(0, .02, -.1)),
                               RigidBodyInertia(.5, Vector(.01, 0, .05), RotationalInertia(.003, .0032, .0004, 0, 0, 0))));
    ChainIdSolver_RNE solver(chain, Vector(0, 0, -9.80665));
    std::vector<JntArray> q(N, JntArray(n)), w(N, JntArray(n)), a(N, JntArray(n));
    for (int i = 0; i < N; i++)
      for (int j = 0; j < n; j++) { q[i](j) = 2 * (draw() - .5); w[i](j) = 4 * (draw() - .5); a[i](j) = 20 * (draw() - .5); }
    Wrenches none(n, Wrench::Zero());
    JntArray torque(n);
    BENCH({ long k = i & (N - 1); solver.CartToJnt(q[k], w[k], a[k], none, torque); total += torque(0); });
  }
  sink = total;
  return 0;
}
