using StudioKit.Physics.Light.Covers;
using StudioKit.Physics.Light.Views;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Standing;

/// <summary>The mirror image of a light in a glossy level sheet, as the camera sees it.</summary>
public static class SheetGloss
{
    /// <summary>Brightest part of the mirror image within the frame.</summary>
    /// <param name="light">The light over the sheet.</param>
    /// <param name="view">The camera's view.</param>
    /// <param name="sheet">Height of the sheet over the ground [m].</param>
    /// <param name="refractiveIndex">Index of the sheet n [1]; 1 to 10.</param>
    /// <returns>R·L, the Fresnel reflectance times the window's luminance times time [cd·s/m²]; none where no part of the image lies within the frame.</returns>
    /// <remarks>A point at height h over the sheet is seen where a point h under it would be; the window's luminance is I/(A·cos θ).</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("BornWolf1999", "law of reflection and Fresnel formulae, §1.5")]
    public static double? Glare(Emitter light, CameraView view, double sheet, double refractiveIndex = 1.49)
    {
        ArgumentNullException.ThrowIfNull(light);
        ArgumentNullException.ThrowIfNull(view);
        var (rays, n) = (new ViewRays(view, Guard.Finite(sheet)), Guard.Between(refractiveIndex, 1, 10));
        double? brightest = null;
        foreach (var (window, _) in LightOnSurface.Points(light))
        {
            if (window.Z > sheet && rays.Holds(Mirrored(window, sheet)))
            {
                brightest = Math.Max(brightest ?? 0, Reflected(light, window, rays.Pupil, sheet, n));
            }
        }

        return brightest;
    }

    internal static Position Mirrored(Position place, double sheet) => place with { Z = (2 * sheet) - place.Z };

    private static double Reflected(Emitter light, Position window, Position pupil, double sheet, double refractiveIndex)
    {
        // The image's ray to the pupil meets the sheet where the true ray is turned back.
        var image = Mirrored(window, sheet);
        var mirror = Position.Between(image, pupil, (sheet - image.Z) / (pupil.Z - image.Z));
        var way = Direction.From(window, mirror);
        var axial = way.Dot(light.Orientation.Axis);
        return axial <= 0
            ? 0
            : ClearWall.FaceReflectance(refractiveIndex, Math.Acos(Math.Clamp(-way.Z, 0, 1))) * light.AxialIntensityTime
                * light.Lobe.RelativeIntensity(way.Dot(light.Orientation.Across), way.Dot(light.Orientation.Along), axial)
                / (light.Width.Meters * light.Height.Meters * axial);
    }
}
