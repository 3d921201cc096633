#pragma once

/// Elliptic integrals, for the shapes of bent sheet (elastica.h) and the length of a wave (wave.h).
/// Sums, products and square roots alone, so that every build gives the same bits. The parameter is
/// m, the square of the modulus k that some tables use.
namespace pouncemark::frame {

/// Carlson's RF(x, y, z): half the integral from 0 to infinity of dt / √((t+x)(t+y)(t+z)). None
/// negative, at most one 0. Source: DLMF 19.16.1, computed as 19.36.1.
double carlson_rf(double x, double y, double z);

/// Carlson's RD(x, y, z): three halves of the integral of dt / ((t+z) √((t+x)(t+y)(t+z))). x and y
/// not negative, at most one of them 0; z > 0. Source: DLMF 19.16.5, computed as 19.36.2.
double carlson_rd(double x, double y, double z);

/// K(m), first kind, for m < 1 (it grows without end toward 1); m may be negative.
double complete_first(double m);

/// E(m), second kind, for m <= 1; m may be negative.
double complete_second(double m);

}  // namespace pouncemark::frame
