using StudioKit.Kits.Subjects;
using StudioKit.Planning;
using StudioKit.Web.Results;
using UnitsNet;

namespace StudioKit.Web.Engine.Telling;

/// <summary>The kit's subjects, with how long each may be held.</summary>
internal static class AnimalTelling
{
    public static IReadOnlyList<AnimalLine> Of(Plan plan)
    {
        var limits = plan.Handling.SelectMany(card => card.Subjects).ToDictionary(held => held.Name, held => held.HoldLimit, StringComparer.Ordinal);
        return [.. plan.Kit.Subjects.Select(subject => Of(subject, limits.GetValueOrDefault(subject.Name)))];
    }

    private static AnimalLine Of(SubjectSpec subject, Duration? limit) => new(
        subject.Name, Math.Round(subject.Length.Millimeters, 1), PlanFormat.Millimetres(subject.Length),
        limit?.Seconds ?? 0, limit is { } most ? $"at most {MeasureFormat.Minutes(most)} in the hand or the studio" : "not held");
}
