using StudioKit.Kits.Subjects;
using StudioKit.Planning;
using StudioKit.Planning.Handling;

namespace StudioKit.Wording;

/// <summary>Lines of a handling guide in words, with strength and contact time of what they disinfect with.</summary>
internal static class DisinfectantText
{
    /// <summary>The line as it is printed.</summary>
    public static string Of(HandlingAdvice line) => line.Disinfectant is { } disinfectant
        ? $"{line.Text.TrimEnd('.')}: {MeasureFormat.FinePercent(disinfectant.Strength)} {Name(disinfectant.Agent)}, wet for {MeasureFormat.Seconds(disinfectant.ContactTime)} or longer."
        : line.Text;

    private static string Name(DisinfectantAgent agent) => agent switch
    {
        DisinfectantAgent.Bleach => "household bleach in water",
        DisinfectantAgent.Hypochlorite => "sodium hypochlorite",
        DisinfectantAgent.Ethanol => "ethanol",
        _ => throw new ArgumentOutOfRangeException(nameof(agent), agent, "A disinfectant without a name."),
    };
}
