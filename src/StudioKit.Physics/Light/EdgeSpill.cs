using StudioKit.Physics.Light.Solving;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Light;

/// <summary>Light that a bright sheet behind a subject throws round the subject's edges.</summary>
public static class EdgeSpill
{
    // A quarter turn halved so often is under a thousandth of a degree.
    private const int Halvings = 20;

    /// <summary>Luminous exposure of a small surface of the subject.</summary>
    /// <param name="sheet">The sheet, part by part.</param>
    /// <param name="place">Where the surface is.</param>
    /// <param name="facing">Its normal: square to the line of sight at the limb.</param>
    /// <returns>π·Σ Q_L·F over the parts [lx·s].</returns>
    /// <remarks>What lies behind the surface is cut off. Of a whole sheet at right angles F is that of Howell's configuration B-4.</remarks>
    /// <exception cref="ArgumentNullException">There is no sheet.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A luminance is negative or not finite.</exception>
    [Source("Baum1989", "form factor of a differential area and a polygon, after Lambert")]
    [Source("Howell", "configuration B-4, differential element to a rectangle in a plane at 90°")]
    public static double On(IReadOnlyList<GlowingPatch> sheet, Position place, Direction facing)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var sum = 0.0;
        foreach (var part in sheet)
        {
            sum += Guard.NonNegative(part.LuminanceTime, nameof(sheet)) * PolygonFactor.From(place, facing, new Patch(default, part.A, part.B, part.C, part.D, 0));
        }

        return Math.PI * sum;
    }

    /// <summary>How far round a cylinder, from its limb towards the camera, the sheet gives more than some level.</summary>
    /// <param name="sheet">The sheet, part by part, all of it beyond the plane through the subject square to the line of sight.</param>
    /// <param name="place">Where the subject is; the cylinder is thin against its distance from the sheet.</param>
    /// <param name="limb">Normal at the limb, square to the line of sight.</param>
    /// <param name="sight">Line of sight, from the camera on.</param>
    /// <param name="level">Luminous exposure to fall to [lx·s]; &gt; 0.</param>
    /// <returns>Angle φ from the limb at which π·Σ Q_L·F is down to the level; 0° where it is lower already at the limb, at most 90°.</returns>
    /// <remarks>The normal there is limb·cos φ − sight·sin φ. As it turns to the camera every visible point of the sheet gives less, so there is one such angle.</remarks>
    /// <exception cref="ArgumentNullException">There is no sheet.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("Derived", "bisection on Lambert's polygon sum, which falls from the limb to the camera's side")]
    public static Angle Reach(IReadOnlyList<GlowingPatch> sheet, Position place, Direction limb, Direction sight, double level)
    {
        Guard.Positive(level);
        var (low, high) = (0.0, Math.PI / 2);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = On(sheet, place, Turned(middle)) > level ? (middle, high) : (low, middle);
        }

        return Angle.FromRadians(low);

        Direction Turned(double angle)
        {
            var (sine, cosine) = Math.SinCos(angle);
            return Direction.Of((limb.X * cosine) - (sight.X * sine), (limb.Y * cosine) - (sight.Y * sine), (limb.Z * cosine) - (sight.Z * sine));
        }
    }

    /// <summary>Width of a rim as the camera sees it.</summary>
    /// <param name="reach">Angle round the cylinder from its limb φ; 0° to 90°.</param>
    /// <returns>(1 − cos φ)/2 of the cylinder's diameter [1]; 0 to ½.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    [Source("Derived", "projection of a circle's arc")]
    public static double ShareOfDiameter(Angle reach) => (1 - Math.Cos(Guard.Between(reach.Radians, 0, Math.PI / 2, nameof(reach)))) / 2;
}
