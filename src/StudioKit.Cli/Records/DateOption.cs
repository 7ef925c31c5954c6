using System.CommandLine;
using StudioKit.Field.Log;

namespace StudioKit.Cli.Records;

/// <summary>Options whose values are dates: days, or moments on the clock of the computer's zone where they name none.</summary>
internal static class DateOption
{
    public static Option<FieldDate?> Create(string name, string description, CommandHost host, bool needsHour = false) => new(name)
    {
        Description = description,
        HelpName = "date",
        CustomParser = result =>
        {
            if (result.Tokens is [var token] && FieldDate.TryRead(token.Value, local => host.Clock.LocalTimeZone.GetUtcOffset(local), out var date) && !(needsHour && date.Moment is null))
            {
                return date;
            }

            result.AddError($"{name}: '{string.Join(' ', result.Tokens.Select(token => token.Value))}' is no {(needsHour ? "moment; write it" : "date; write a day as 2026-05-09, a moment")} as 2026-05-09T14:00 or 2026-05-09T14:00+01:00.");
            return null;
        },
    };
}
