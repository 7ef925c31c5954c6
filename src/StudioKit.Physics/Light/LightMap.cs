using StudioKit.Physics.Light.Solving;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Light;

/// <summary>Luminous exposure over the underside of the panel, and what leaves its top.</summary>
public sealed class LightMap
{
    private readonly PanelSurface _surface;
    private readonly PanelExit _exit;
    private readonly UnitLight[] _flashes;
    private readonly PointLight _light;

    internal LightMap(LightPanel panel, PanelGrid grid, IReadOnlyList<Emitter> emitters, UnitLight[] flashes)
    {
        (Panel, Grid, _flashes, Emitters) = (panel, grid, flashes, [.. emitters]);
        _light = PointLight.Of(flashes, [.. emitters.Select(emitter => emitter.AxialIntensityTime)]);
        (_surface, _exit) = (new PanelSurface(panel), new PanelExit(panel));
    }

    /// <summary>The sheet it belongs to.</summary>
    public LightPanel Panel { get; }

    /// <summary>Where its points lie.</summary>
    public PanelGrid Grid { get; }

    /// <summary>The flashes at work.</summary>
    public ValueList<Emitter> Emitters { get; }

    /// <summary>The same flashes in the same places at other intensities: light grows in step with them, so nothing is solved again.</summary>
    /// <param name="axialIntensityTimes">Luminous intensity on each flash's axis times time, in the order of <see cref="Emitters"/> [cd·s]; ≥ 0.</param>
    /// <returns>The map that lighting the box with them would give, bit for bit.</returns>
    /// <exception cref="ArgumentException">There is not one intensity for each flash.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An intensity is negative or not finite.</exception>
    [Source("Derived", "luminous exposure is proportional to luminous intensity")]
    public LightMap AtIntensities(IReadOnlyList<double> axialIntensityTimes)
    {
        ArgumentNullException.ThrowIfNull(axialIntensityTimes);
        if (axialIntensityTimes.Count != Emitters.Count)
        {
            throw new ArgumentException("There must be one intensity for each flash.", nameof(axialIntensityTimes));
        }

        Emitter[] emitters = [.. Emitters.Zip(axialIntensityTimes, (emitter, intensity) => emitter with
        {
            AxialIntensityTime = Guard.NonNegative(intensity, nameof(axialIntensityTimes)),
        })];
        return new LightMap(Panel, Grid, emitters, _flashes);
    }

    /// <summary>Where the light went; none where nothing reflects and so only the panel was worked out.</summary>
    public LightBalance? Balance => _light.Balance;

    /// <summary>Luminous exposure on the underside [lx·s].</summary>
    /// <param name="column">Column from the left [1].</param>
    /// <param name="row">Row from the front [1].</param>
    /// <returns>Straight and reflected light together [lx·s].</returns>
    [Source("Goral1984", "direct light plus final gather")]
    public double Exposure(int column, int row) => DirectExposure(column, row) + _light.Interreflected[Index(column, row)];

    /// <summary>The part of it that comes straight from the flashes.</summary>
    /// <inheritdoc cref="Exposure" path="/param"/>
    /// <returns>Straight light alone [lx·s].</returns>
    [Source("Walsh1958", "inverse square and cosine laws of illumination")]
    public double DirectExposure(int column, int row)
    {
        var (sum, index) = (0.0, Index(column, row));
        foreach (var flash in _light.Direct)
        {
            sum += flash[index];
        }

        return sum;
    }

    /// <summary>Place of a point on the underside.</summary>
    /// <inheritdoc cref="Exposure" path="/param"/>
    public Position Place(int column, int row) => _surface.At(
        ((column + 0.5) / Grid.Columns * _surface.Width) - (_surface.Width / 2), (row + 0.5) / Grid.Rows * _surface.Depth);

    /// <summary>Luminance times time of the panel's top at any place, in one direction [cd·s/m²].</summary>
    /// <param name="across">Place to the right of the panel's middle.</param>
    /// <param name="alongSheet">Place along the sheet from its front edge.</param>
    /// <param name="towards">Direction from there to the camera.</param>
    /// <returns>Q_L [cd·s/m²]; T·H/π for a perfect diffuser.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The place is not on the sheet.</exception>
    [Source("Derived", "L = T·H/π for a perfect diffuser, the scatter lobe for another")]
    public double LuminanceTime(Length across, Length alongSheet, Direction towards)
    {
        var x = Guard.Between(across.Meters, -_surface.Width / 2, _surface.Width / 2, nameof(across));
        var s = Guard.Between(alongSheet.Meters, 0, _surface.Depth, nameof(alongSheet));
        Span<double> luminances = stackalloc double[_flashes.Length];
        UnitLuminanceTimes(x, s, towards, luminances);
        return Sum(luminances);
    }

    /// <summary>What each flash gives by itself.</summary>
    internal IReadOnlyList<UnitLight> Flashes => _flashes;

    /// <summary>What each flash gives to it at an axial intensity·time of 1 cd·s: luminance times time [cd·s/m²].</summary>
    /// <param name="x">Place to the right of the panel's middle [m].</param>
    /// <param name="s">Place along the sheet from its front edge [m].</param>
    /// <param name="towards">Direction from there to the camera.</param>
    /// <param name="into">One place for each flash.</param>
    internal void UnitLuminanceTimes(double x, double s, Direction towards, Span<double> into)
    {
        var (cell, place, normal) = (Cell(x, s), _surface.At(x, s), _surface.NormalAt(s));
        for (var i = 0; i < into.Length; i++)
        {
            into[i] = _exit.Even(cell.Of(_flashes[i].Interreflected))
                + _exit.Straight(cell.Of(_flashes[i].Direct), Emitters[i].Centre, place, normal, towards);
        }
    }

    /// <summary>What all flashes give together at their intensities [cd·s/m²].</summary>
    internal double Sum(ReadOnlySpan<double> unitLuminanceTimes)
    {
        var sum = 0.0;
        for (var i = 0; i < unitLuminanceTimes.Length; i++)
        {
            sum += Emitters[i].AxialIntensityTime * unitLuminanceTimes[i];
        }

        return sum;
    }

    /// <summary>Whether another map has the same flashes in the same places, at whatever intensities.</summary>
    internal bool DiffersOnlyInIntensity(LightMap other) => ReferenceEquals(_flashes, other._flashes);

    // Between the four nearest points by straight lines, carried on beyond the outermost ones: there light that falls off goes on by equal shares, as straight lines would soon
    // come to less than none where the outermost points lie in the shadow of a rail. What falls to under half within half a cell is such a shadow, and no slope that goes on.
    private GridCell Cell(double x, double s)
    {
        var (column, right) = Split(((x / _surface.Width) + 0.5) * Grid.Columns, Grid.Columns);
        var (row, up) = Split(s / _surface.Depth * Grid.Rows, Grid.Rows);
        var first = Index(column, row);
        return new GridCell(first, Grid.Columns > 1 ? 1 : 0, Grid.Rows > 1 ? Grid.Columns : 0, right, up);
    }

    private static (int Cell, double Share) Split(double place, int count)
    {
        var cell = Math.Clamp((int)Math.Floor(place - 0.5), 0, Math.Max(0, count - 2));
        return (cell, place - 0.5 - cell);
    }

    private int Index(int column, int row) => (row * Grid.Columns) + column;

    private readonly record struct GridCell(int First, int StepRight, int StepUp, double Right, double Up)
    {
        private const double Shadow = 0.5;

        public double Of(double[] values)
        {
            var near = Mix(values[First], values[First + StepRight], Right);
            var far = Mix(values[First + StepUp], values[First + StepUp + StepRight], Right);
            return Mix(near, far, Up);
        }

        private static double Mix(double from, double to, double share) => share switch
        {
            < 0 => Beyond(from, to, -share),
            > 1 => Beyond(to, from, share - 1),
            _ => from + ((to - from) * share),
        };

        private static double Beyond(double outer, double inner, double share) =>
            outer < inner ? outer * Math.Max(Shadow, Math.Pow(outer / inner, share)) : outer + ((outer - inner) * share);
    }
}
