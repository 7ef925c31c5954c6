using StudioKit.Physics.Light.Checks;
using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Light.Solving;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light;

/// <summary>Light on the panel while flashes or the sheet's edges are being moved: quick, and equal to the exact answer where the moving began.</summary>
/// <remarks>
/// Straight light is worked out as in a plan, shadows included. Reflected light comes from the middle of each window with nothing in its way, and is then scaled, point by
/// point, by what the exact answer has over the same guess where the moving began; so what is left out is how the shadows of pipes and bodies in the reflected light shift
/// with the flash. Of a sheet of another size the reflected light is that of the old one at the same shares of width and depth, and the frame's pipes are spread with it.
/// Never to be printed or kept where <see cref="LightBox.Illuminate"/> has an answer.
/// </remarks>
public sealed class LightPreview
{
    // Far under what the guess itself leaves out.
    private const double Settled = 1e-4;

    private readonly LightBox _box;
    private readonly double[][] _corrections;

    internal LightPreview(LightBox box, LightMap exact)
    {
        _box = box;
        _corrections = [.. exact.Emitters.Select((emitter, flash) => Corrections(exact.Flashes[flash].Interreflected, Guess(emitter)))];
    }

    /// <summary>Light of the same flashes in other places.</summary>
    /// <param name="emitters">The flashes, in the order of the exact answer.</param>
    /// <param name="sheet">The sheet, where it too has changed; none for the box's own.</param>
    /// <returns>Luminous exposure over the panel [lx·s].</returns>
    /// <exception cref="ArgumentException">There are more flashes or fewer, or one stands where it cannot; <see cref="SceneCheck"/> says beforehand how.</exception>
    [Source("Goral1984", "direct light, interreflection, final gather")]
    public LightMap At(IReadOnlyList<Emitter> emitters, LightPanel? sheet = null)
    {
        ArgumentNullException.ThrowIfNull(emitters);
        if (emitters.Count != _corrections.Length)
        {
            throw new ArgumentException("There must be as many flashes as where the moving began.", nameof(emitters));
        }

        var panel = sheet ?? _box.Panel;
        var surround = _box.Surround with { Frame = Spread(panel) };
        SceneCheck.Refuse(SceneCheck.Problems(panel, surround, emitters));
        Obstacle[] obstacles = [.. surround.Frame, .. emitters.Select(emitter => emitter.Body).OfType<Obstacle>()];
        var points = sheet is null ? _box.Receivers : LightBox.GridPoints(panel, _box.Points);
        return new LightMap(panel, _box.Points, emitters, [.. emitters.Select((emitter, flash) => new UnitLight(Straight(emitter, obstacles, points), Reflected(emitter, flash), null))]);
    }

    private double[] Straight(Emitter emitter, Obstacle[] obstacles, ReceiverSet points)
    {
        var direct = new double[points.PaddedCount];
        new DirectLight(emitter, obstacles, _box.NearestSurface(emitter)).AddTo(points, direct);
        return direct;
    }

    private double[] Reflected(Emitter emitter, int flash) => [.. Guess(emitter).Zip(_corrections[flash], (guess, correction) => guess * correction)];

    private double[] Guess(Emitter emitter) =>
        _box.Reflections is { } reflections ? reflections.Settle(_box.Samples!.Exposures(DirectLight.FromMiddle(emitter)), Settled) : new double[_box.Receivers.PaddedCount];

    private static double[] Corrections(double[] exact, double[] guess) => [.. exact.Zip(guess, (right, guessed) => guessed > 0 ? right / guessed : 1)];

    private ValueList<Obstacle> Spread(LightPanel panel)
    {
        var (across, along) = (panel.Width / _box.Panel.Width, panel.Depth / _box.Panel.Depth);
        return across == 1 && along == 1 ? _box.Surround.Frame : [.. _box.Surround.Frame.Select(obstacle => obstacle.Spread(across, along))];
    }
}
