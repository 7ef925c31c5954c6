namespace StudioKit.Physics.Light.Covers;

/// <summary>Where a circle throws light of one point to another in its plane: Alhazen's problem.</summary>
internal static class MirrorCircle
{
    // Near its ends two such points can lie close together; one in two degrees parts them but where both graze.
    private const int Parts = 180;
    private const int Halvings = 40;

    // Symmetric scenes have their answers on the axes, where the round of angles must not begin.
    private const double Start = 0.0123;

    /// <summary>Angles on a circle about the origin at which the way from one point to the other is stationary and turned back, not let through [rad].</summary>
    public static IEnumerable<double> Angles(double radius, (double X, double Y) light, (double X, double Y) eye)
    {
        var before = Turn(radius, light, eye, Start);
        for (var i = 0; i < Parts; i++)
        {
            var (from, to) = (Start + (Math.Tau * i / Parts), Start + (Math.Tau * (i + 1) / Parts));
            var after = Turn(radius, light, eye, to);
            if (before <= 0 != after <= 0 && Root(radius, light, eye, from, to) is var angle && IsTurnedBack(radius, light, eye, angle))
            {
                yield return angle;
            }

            before = after;
        }
    }

    // By how much the two rays at a point of the circle lie on one side of its normal: sines of both angles, added.
    private static double Turn(double radius, (double X, double Y) light, (double X, double Y) eye, double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        return Sine(light) + Sine(eye);

        double Sine((double X, double Y) point)
        {
            var (x, y) = (point.X - (radius * cos), point.Y - (radius * sin));
            return ((cos * y) - (sin * x)) / double.Hypot(x, y);
        }
    }

    private static double Root(double radius, (double X, double Y) light, (double X, double Y) eye, double from, double to)
    {
        var isUnder = Turn(radius, light, eye, from) <= 0;
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (from + to) / 2;
            (from, to) = Turn(radius, light, eye, middle) <= 0 == isUnder ? (middle, to) : (from, middle);
        }

        return (from + to) / 2;
    }

    private static bool IsTurnedBack(double radius, (double X, double Y) light, (double X, double Y) eye, double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        return Height(light) * Height(eye) > 0;

        double Height((double X, double Y) point) => (point.X * cos) + (point.Y * sin) - radius;
    }
}
