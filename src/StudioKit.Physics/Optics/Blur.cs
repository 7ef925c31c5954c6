using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>Blur on the sensor from defocus and diffraction together.</summary>
public static class Blur
{
    /// <summary>Blur from defocus of a point off the focused plane, from the cone at the entrance pupil.</summary>
    /// <param name="magnification">Magnification m of the focused plane [1]; &gt; 0.</param>
    /// <param name="effectiveFNumber">Effective f-number N_e [1]; &gt; 0.</param>
    /// <param name="offset">Distance of the point from the focused plane δ, positive towards the camera [m]; below u_e.</param>
    /// <param name="pupilVergence">One over the distance from focused plane to entrance pupil, 1/u_e [1/m]; 0 for a pupil at infinity.</param>
    /// <returns>Diameter of the spot, m²·|δ|/(N_e·(1 − δ/u_e)) [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite, or the point lies in the pupil.</exception>
    [Source("Derived", "similar triangles at the entrance pupil; A/u_e = m/N_e from Greivenkamp2004")]
    public static double FromOffset(double magnification, double effectiveFNumber, double offset, double pupilVergence = 0)
    {
        var m = Guard.Positive(magnification);
        var left = Guard.Positive(1 - (Guard.Finite(offset) * Guard.Finite(pupilVergence)), nameof(offset));
        return m * m * Math.Abs(offset) / (Guard.Positive(effectiveFNumber) * left);
    }

    /// <summary>Blur from defocus and diffraction together.</summary>
    /// <param name="defocus">Diameter of the defocus spot [m]; ≥ 0.</param>
    /// <param name="diffraction">Diameter of the diffraction spot [m]; ≥ 0.</param>
    /// <returns>Diameter √(defocus² + diffraction²) [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Hansma1996", "root-square combination")]
    public static double Combined(double defocus, double diffraction) =>
        Math.Sqrt((Guard.NonNegative(defocus) * defocus) + (Guard.NonNegative(diffraction) * diffraction));

    /// <summary>Blur at a subject's nearest, middle and farthest point, the lens focused on the middle.</summary>
    /// <param name="stack">The focused stack.</param>
    /// <param name="depth">Depth of the subject along the line of sight; ≥ 0 m, its near half before the entrance pupil.</param>
    /// <param name="wavelength">Wavelength λ [m]; &gt; 0.</param>
    /// <param name="airyShare">Share of the Airy disc counted as diffraction blur k [1]; &gt; 0, of which 0.5 to 1 is published.</param>
    /// <returns>The blur spots on the sensor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Hansma1996", "root-square combination")]
    public static SubjectBlurResult OverSubject(
        OpticalStackResult stack, Length depth, double wavelength = Diffraction.GreenLight, double airyShare = 1)
    {
        ArgumentNullException.ThrowIfNull(stack);
        var half = Guard.NonNegative(depth.Meters, nameof(depth)) / 2;
        var n = stack.EffectiveFNumber.Value;
        var diffraction = Guard.Positive(airyShare) * Diffraction.AiryDiscDiameter(n, wavelength);
        var vergence = stack.SubjectToEntrancePupil is { } distance ? 1 / distance.Meters : 0;
        return new SubjectBlurResult(At(half), At(0), At(-half));

        BlurResult At(double offset)
        {
            var defocus = FromOffset(stack.Magnification.Value, n, offset, vergence);
            return new BlurResult(
                Length.FromMeters(defocus), Length.FromMeters(diffraction), Length.FromMeters(Combined(defocus, diffraction)));
        }
    }
}
