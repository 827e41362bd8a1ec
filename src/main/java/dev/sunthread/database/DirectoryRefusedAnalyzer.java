package dev.sunthread.database;

import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** Shows a refused directory at start as a reason and a remedy instead of a stack trace. */
class DirectoryRefusedAnalyzer extends AbstractFailureAnalyzer<DirectoryRefused> {

    @Override
    protected FailureAnalysis analyze(Throwable failure, DirectoryRefused refused) {
        return new FailureAnalysis(refused.reason(), refused.remedy(), refused);
    }
}
