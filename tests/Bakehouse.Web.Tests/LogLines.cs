namespace Bakehouse.Web.Tests;

using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;

/// <summary>Every line that the app logs, at every level, with its values, its scopes and its exception as text.</summary>
internal sealed class LogLines : ILoggerProvider, ISupportExternalScope
{
    private IExternalScopeProvider scopes = new LoggerExternalScopeProvider();

    public ConcurrentQueue<(string Category, LogLevel Level, string Text)> All { get; } = new();

    public ILogger CreateLogger(string categoryName) => new Writer(this, categoryName);

    public void SetScopeProvider(IExternalScopeProvider scopeProvider) => scopes = scopeProvider;

    public void Dispose()
    {
    }

    private sealed class Writer(LogLines lines, string category) : ILogger
    {
        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => lines.scopes.Push(state);

        public bool IsEnabled(LogLevel logLevel) => true;

        public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter)
        {
            var text = new List<string> { formatter(state, exception), Said(state), $"{exception}" };
            lines.scopes.ForEachScope((scope, all) => all.Add(Said(scope)), text);
            lines.All.Enqueue((category, logLevel, string.Join(" | ", text)));
        }

        private static string Said(object? state) => state is IEnumerable<KeyValuePair<string, object?>> values
            ? string.Join(", ", values.Select(v => $"{v.Key}={v.Value}"))
            : $"{state}";
    }
}
