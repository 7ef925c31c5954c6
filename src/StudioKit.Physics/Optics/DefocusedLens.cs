using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Optics;

/// <summary>Contrast that a perfect round lens keeps out of focus, diffraction and defocus in one.</summary>
public static class DefocusedLens
{
    // Simpson's rule over a smooth integrand: so many steps over its quarter turn, and more where it oscillates; the error stays under 1e-6.
    private const int LeastSteps = 64;
    private const double StepsPerRadian = 8;

    /// <summary>Contrast of a grating at a spatial frequency on the sensor.</summary>
    /// <param name="frequency">Spatial frequency ν [1/m]; ≥ 0.</param>
    /// <param name="effectiveFNumber">Effective f-number N_e [1]; &gt; 0.</param>
    /// <param name="defocusSpot">Diameter of the defocus spot on the sensor d, by rays [m]; ≥ 0.</param>
    /// <param name="wavelength">Wavelength λ [m]; &gt; 0.</param>
    /// <returns>
    /// Transfer (4/π)·∫₀^(1−s) cos(a·x)·√(1 − (x + s)²) dx with s = ν·λ·N_e and a = π·ν·d [1]; negative where bright and dark change places, 0 above the cut-off.
    /// </returns>
    /// <remarks>A wavefront out by W·ρ² at the pupil's edge throws rays over d = 8·N_e·W, whence a = 8π·s·W/λ. In focus it is the diffraction-limited transfer, for large d the rays' own 2·J₁(a)/a.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Hopkins1955", "transfer of a defocused circular pupil, as an integral over the pupils' common area")]
    [Source("AbramowitzStegun", "25.4.6: Simpson's rule")]
    [Source("Goodman1968", "ch. 6: transfer of an aberrated pupil")]
    public static double ModulationTransfer(double frequency, double effectiveFNumber, double defocusSpot, double wavelength = Diffraction.GreenLight)
    {
        var s = Guard.NonNegative(frequency) / Diffraction.CutOffFrequency(effectiveFNumber, wavelength);
        var swing = Math.PI * frequency * Guard.NonNegative(defocusSpot);
        if (s >= 1)
        {
            return 0;
        }

        // u = x + s = sin θ takes the root out of the integrand, whose slope has no end at the pupil's edge.
        var from = Math.Asin(s);
        var steps = LeastSteps + (2 * (int)Math.Min(StepsPerRadian * swing, 1e6));
        return 4 / Math.PI * Integral(Common, from, Math.PI / 2, steps);

        double Common(double angle)
        {
            var (sine, cosine) = Math.SinCos(angle);
            return Math.Cos(swing * (sine - s)) * cosine * cosine;
        }
    }

    /// <summary>Largest defocus spot at which a grating keeps a given contrast, bright where it is bright.</summary>
    /// <param name="frequency">Spatial frequency ν [1/m]; &gt; 0.</param>
    /// <param name="effectiveFNumber">Effective f-number N_e [1]; &gt; 0.</param>
    /// <param name="contrast">Contrast wanted of a full one [1]; above 0, at most 1.</param>
    /// <param name="wavelength">Wavelength λ [m]; &gt; 0.</param>
    /// <returns>Diameter of the spot [m]; none where the lens does not keep that contrast even in focus.</returns>
    /// <remarks>A grating may show again further out with bright and dark changed about; that is not the grating, and is not counted.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Hopkins1955", "transfer of a defocused circular pupil, solved for the defocus")]
    public static double? LargestSpot(double frequency, double effectiveFNumber, double contrast, double wavelength = Diffraction.GreenLight)
    {
        var wanted = Guard.Between(Guard.Positive(contrast), 0, 1, nameof(contrast));
        var inFocus = ModulationTransfer(Guard.Positive(frequency), effectiveFNumber, 0, wavelength);
        if (inFocus < wanted)
        {
            return null;
        }

        var low = 0.0;
        var high = SpotOfOneTurn(frequency, effectiveFNumber, wavelength);
        while (high - low > high * 1e-9)
        {
            var middle = (low + high) / 2;
            (low, high) = ModulationTransfer(frequency, effectiveFNumber, middle, wavelength) >= wanted ? (middle, high) : (low, middle);
        }

        return low;
    }

    /// <summary>Spot at which the wave goes through a whole turn over the pupils' common area, which leaves nothing of a grating or turns it about; smaller spots leave less the larger they are.</summary>
    /// <remarks>The root under the integral falls from the pupil's middle to its edge, ever steeper, so a whole turn of the cosine comes to less than nothing.</remarks>
    internal static double SpotOfOneTurn(double frequency, double effectiveFNumber, double wavelength) =>
        2 / (frequency * (1 - (frequency / Diffraction.CutOffFrequency(effectiveFNumber, wavelength))));

    // An even number of steps: the ends count once, and between them every other place four times and twice.
    private static double Integral(Func<double, double> integrand, double from, double to, int steps)
    {
        var step = (to - from) / steps;
        var sum = integrand(from) + integrand(to);
        for (var i = 1; i < steps; i++)
        {
            sum += (i % 2 == 1 ? 4 : 2) * integrand(from + (i * step));
        }

        return sum * step / 3;
    }
}
