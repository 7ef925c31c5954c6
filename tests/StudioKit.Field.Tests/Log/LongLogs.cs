using StudioKit.Field.Log;

namespace StudioKit.Field.Tests.Log;

/// <summary>Logs of any length: of each session two subjects, one of every tenth session sensitive, with three frames and a measurement each.</summary>
internal static class LongLogs
{
    public static LogSnapshot Of(int sessions) => new(
        [.. Enumerable.Range(0, sessions).Select(i => LogSamples.Session with { Id = $"session-{i}", Latitude = 52 + (i % 70 * 0.013), Start = LogSamples.Session.Start.Moment!.Value.AddDays(-(i % 50)) })],
        [.. Enumerable.Range(0, 2 * sessions).Select(i => LogSamples.Subject with { Id = $"subject-{i}", SessionId = $"session-{i / 2}", Sensitivity = i % 20 == 0 ? PlaceSensitivity.Tenth : PlaceSensitivity.Open })],
        [.. Enumerable.Range(0, 6 * sessions).Select(i => LogSamples.Frame with { SubjectId = $"subject-{i / 3}", FileName = $"F{i}.jpg", Caption = i % 5 == 0 ? "\"Raft\"\nspider é蛾" : "" })],
        [.. Enumerable.Range(0, 2 * sessions).Select(i => LogSamples.Measurement with { Id = $"measurement-{i}", SubjectId = $"subject-{i}" })]);
}
