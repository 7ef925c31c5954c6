using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Covers;

/// <summary>How unsure it is what a clear wall takes.</summary>
public static class CoverDoubt
{
    // Grades of one material and the colours of a flash differ by this much about its index for yellow light [1].
    private const double IndexSpread = 0.02;

    // What a wall in use absorbs and scatters beyond Fresnel's formulae: tint, haze, scratches, fingers [1].
    private const double Taken = 0.05;

    /// <summary>One standard deviation of the loss in one wall.</summary>
    /// <param name="refractiveIndex">Index of the wall n [1]; 1.1 to 3.</param>
    /// <returns>Half of the difference between the losses at n + 0.02 and n − 0.02 head-on, and 5 % of the light, together [stops]; about 0.08.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The index is outside its range.</exception>
    [Source("RefractiveIndexTable", "grades of one material, and blue against red light, differ by a few hundredths")]
    [Source("CommonPractice", "a clear wall in use takes up to a twentieth more than a clean one in theory")]
    public static Stops OfWall(double refractiveIndex)
    {
        Guard.Between(refractiveIndex, 1.1, 3);
        var index = (ClearWall.Loss(refractiveIndex + IndexSpread) - ClearWall.Loss(refractiveIndex - IndexSpread)).Value / 2;
        return new Stops(double.Hypot(index, -Math.Log2(1 - Taken)));
    }

    /// <summary>The same for all walls between two points, which are of one stuff and so are off together.</summary>
    /// <param name="cover">The cover.</param>
    /// <param name="from">A point.</param>
    /// <param name="to">Another.</param>
    /// <returns>So many times that of one wall [stops]; 0 where there is none, and for the surface of clean water.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    [Source("Derived", "deviations of one cause add")]
    public static Stops Between(CoverCase cover, Position from, Position to)
    {
        ArgumentNullException.ThrowIfNull(cover);
        return new Stops(OfWall(cover.RefractiveIndex).Value * CoverPath.Crossings(cover, from, to).Count(crossing => crossing.Face != CoverFace.Water));
    }
}
