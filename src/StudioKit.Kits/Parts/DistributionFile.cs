using StudioKit.Kits.Lighting;
using StudioKit.Kits.Text;
using StudioKit.Physics.Light.Lobes;

namespace StudioKit.Kits.Parts;

/// <summary>Takes the text of a photometric file for a light distribution, and says by line and column what is wrong with one.</summary>
internal static class DistributionFile
{
    public static LightDistribution? Read(string name, SourceText source, DiagnosticList diagnostics)
    {
        var reading = IesPhotometry.Read(source.Text);
        if (reading.Problem is { } problem)
        {
            diagnostics.Error(
                DiagnosticCodes.Photometry, source, problem.Line, problem.Column, problem.Sentence,
                "A light distribution is a text as IES LM-63 lays it down: keywords, a line TILT=NONE, the lamp's numbers, vertical and horizontal angles, then candelas.");
        }

        return reading.Lobe is { } lobe ? new LightDistribution(name, lobe, reading.IsAbsolute) : null;
    }
}
