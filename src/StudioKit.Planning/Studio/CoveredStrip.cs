using StudioKit.Physics.Light;
using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>A stretch of the sheet right over a pipe of the frame: it lies in the pipe's shadow and stays dark whatever the power below.</summary>
/// <param name="From">One end of it, on the pipe's centre line.</param>
/// <param name="To">The other end.</param>
/// <param name="Width">Its width, the pipe's outside diameter.</param>
public sealed record CoveredStrip(PanelPlace From, PanelPlace To, Length Width)
{
    // Places on its very edge are on it [m].
    private const double Slack = 1e-6;

    /// <summary>Its corners in order, the two of one end first.</summary>
    public IReadOnlyList<PanelPlace> Corners
    {
        get
        {
            var (along, back) = ((To.Across - From.Across).Meters, (To.AlongSheet - From.AlongSheet).Meters);
            var half = Width / 2 / Math.Sqrt((along * along) + (back * back));
            var (across, aside) = (half * -back, half * along);
            return [Beside(From, across, aside), Beside(From, -across, -aside), Beside(To, -across, -aside), Beside(To, across, aside)];
        }
    }

    /// <summary>Whether a place of the sheet lies on it.</summary>
    /// <param name="place">The place.</param>
    public bool Holds(PanelPlace place)
    {
        var (ax, ay) = ((To.Across - From.Across).Meters, (To.AlongSheet - From.AlongSheet).Meters);
        var (px, py) = ((place.Across - From.Across).Meters, (place.AlongSheet - From.AlongSheet).Meters);
        var square = (ax * ax) + (ay * ay);
        var share = ((px * ax) + (py * ay)) / square;
        var aside = Math.Abs((px * ay) - (py * ax)) / Math.Sqrt(square);
        return share is >= -Slack and <= 1 + Slack && aside <= (Width.Meters / 2) + Slack;
    }

    private static PanelPlace Beside(PanelPlace place, Length across, Length aside) => new(place.Across + across, place.AlongSheet + aside);
}
